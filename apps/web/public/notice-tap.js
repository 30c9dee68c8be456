/* A tap on what the device told goes to the page that is open, or opens one. */
self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  const go = async () => {
    const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
    if (pages.length > 0) await pages[0].focus();
    else await self.clients.openWindow('./#/days');
  };
  event.waitUntil(go());
});
