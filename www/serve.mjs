// Usage: node serve.mjs FOLDER PORT
import { serveFolder } from "./server.mjs";

const [folder, port] = process.argv.slice(2);
try {
  const { url } = await serveFolder(folder, { port: Number(port) });
  console.log(`Pithball is at ${url} (Ctrl-C stops it)`);
} catch (error) {
  if (error.code !== "EADDRINUSE") throw error;
  console.error(`error: port ${port} is in use; choose another with --port`);
  process.exitCode = 1;
}
