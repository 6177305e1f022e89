// Tells what the chair has not yet sent: signing out would wipe it, so that it is left in place.
"use strict";
const request = indexedDB.open("chair");
request.onsuccess = () => {
  const database = request.result;
  if (!database.objectStoreNames.contains("out")) return database.close();
  const all = database.transaction("out").objectStore("out").count();
  all.onsuccess = () => {
    if (all.result > 0) {
      const words = document.getElementById("waiting");
      words.textContent = words.dataset.words.replace("{0}", all.result);
      words.hidden = false;
      document.querySelector("input[name=waiting]").value = "1";
    }
    database.close();
  };
};
// asking must not make a store where there was none
request.onupgradeneeded = () => request.transaction.abort();
