// A static file server for this machine only.
import { createServer } from "node:http";
import sirv from "sirv";

/**
 * Serves `folder` below `base` ("/" or "/some/folder/"); resolves to { url, close }.
 * `onRequest` hears the address of each request.
 */
export async function serveFolder(folder, { base = "/", port = 0, onRequest = () => {} } = {}) {
  const files = sirv(folder, { dev: true });
  const server = createServer((request, response) => {
    onRequest(request.url);
    const missing = () => {
      response.writeHead(404, { "content-type": "text/plain" });
      response.end("Not found");
    };
    if (!request.url.startsWith(base)) return missing();
    request.url = request.url.slice(base.length - 1);
    files(request, response, missing);
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  return {
    url: `http://localhost:${server.address().port}${base}`,
    close() {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(resolve));
    },
  };
}
