export {
  forecastAddress,
  forecastServer,
  type RoundedPlace,
  roundedPlace,
  roundedWithin_km,
  type ServerRead,
  serverFrom,
} from './forecast-address.ts';
export { type ForecastHours, forecastEnd } from './forecast-hours.ts';
export { type ReadForecast, readForecast, replyLimit_bytes } from './read-forecast.ts';
