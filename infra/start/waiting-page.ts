/** Shown while a part of the product is starting; the page asks again by itself. */
export const WAITING_PAGE = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="refresh" content="2">
<title>Courtloom is starting</title>
<style>
:root { color-scheme: light dark }
body { font: 1.125rem/1.5 system-ui, sans-serif; display: grid; place-content: center; min-height: 100vh; margin: 0; padding: 1.5rem; box-sizing: border-box }
h1 { font-size: 1.5rem; margin: 0 0 .5rem }
p { margin: 0; max-width: 34rem }
</style>
</head>
<body>
<main>
<h1>Courtloom is starting</h1>
<p role="status">This page asks again every two seconds. What is charted on a phone stays on that phone and is sent when the connection is back.</p>
</main>
</body>
</html>
`;
