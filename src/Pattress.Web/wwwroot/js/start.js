// Before the first paint: the theme that was chosen on this device.
try {
  const theme = localStorage.getItem('pattress-theme');
  if (theme) document.documentElement.dataset.theme = theme;
} catch { }
