import {
  acidQuestions,
  cardQuestions,
  chargingQuestions,
  dischargeQuestions,
  keepingQuestions,
  lampQuestions,
  restQuestions,
} from '#battery';
import { forecastQuestions, usualQuestions } from '#dues';
import {
  endingQuestions,
  fasteningQuestions,
  groundQuestions,
  hoistQuestions,
  pathQuestions,
  rigQuestions,
  strengthQuestions,
  unmarkedQuestions,
} from '#loads';
import {
  amountQuestions,
  beddingQuestions,
  coatingQuestions,
  cureQuestions,
  metalsQuestions,
  mixingQuestions,
  outdoorQuestions,
} from '#materials';
import { drawQuestions, nightQuestions } from '#power';
import { airQuestions, clearSkyQuestions, slopeLightQuestions, sunlightQuestions, sunQuestions } from '#sky';
import { solarQuestions } from '#solar';
import { balanceQuestions, lashingQuestions, tyreQuestions } from '#trailer';
import { conductorQuestions, dropQuestions, fuseQuestions } from '#wiring';
import type { Question } from '#working';

/** Every question there is, in the order of the reference. */
export function questions(): readonly Question[] {
  return [
    ...sunQuestions(),
    ...airQuestions(),
    ...sunlightQuestions(),
    ...clearSkyQuestions(),
    ...slopeLightQuestions(),
    ...cureQuestions(),
    ...coatingQuestions(),
    ...amountQuestions(),
    ...beddingQuestions(),
    ...mixingQuestions(),
    ...outdoorQuestions(),
    ...metalsQuestions(),
    // battery
    ...restQuestions(),
    ...acidQuestions(),
    ...dischargeQuestions(),
    ...chargingQuestions(),
    ...keepingQuestions(),
    ...lampQuestions(),
    ...cardQuestions(),
    // solar
    ...solarQuestions(),
    // power
    ...drawQuestions(),
    ...nightQuestions(),
    // wiring
    ...dropQuestions(),
    ...conductorQuestions(),
    ...fuseQuestions(),
    // loads
    ...strengthQuestions(),
    ...pathQuestions(),
    ...endingQuestions(),
    ...unmarkedQuestions(),
    ...hoistQuestions(),
    ...fasteningQuestions(),
    ...rigQuestions(),
    ...groundQuestions(),
    // dues
    ...usualQuestions(),
    ...forecastQuestions(),
    // trailer
    ...balanceQuestions(),
    ...tyreQuestions(),
    ...lashingQuestions(),
  ];
}
