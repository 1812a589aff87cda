package org.duskloom.cli;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import org.duskloom.engine.frame.DaemonThreads;

/**
 * Serves the page and the show's frames to browsers on this machine, and nothing else: no file of the disk, to no other
 * machine, under a path that nobody can guess, and to pages from nowhere else (see {@link Visitor}).
 */
final class WatchServer implements AutoCloseable {
    /** A page hears something at least so often, and one that has gone is noticed. */
    private static final long HEARTBEAT_MILLIS = 5000;

    /** How many pages are told of news at a time: each takes a thread. */
    private static final int MOST_PAGES = 32;

    /** Far more than so many pages open; what comes above is closed at once. */
    private static final int MOST_CONNECTIONS = 256;

    private static final int PATH_BYTES = 16;

    /** What the page may do: run what stands in it, and ask this server. */
    private static final String POLICY = "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline';"
            + " img-src data:; media-src 'self' blob:; connect-src 'self'; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'";

    static {
        // Read when the first server is made. Without the first one a small answer takes 40 ms.
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
        // One that asks in halves, or does not listen, holds a thread.
        System.setProperty("jdk.httpserver.maxConnections", String.valueOf(MOST_CONNECTIONS));
    }

    private final HttpServer server;
    private final NewsBoard board;
    private final ServedPaths paths;
    private final String root = "/" + randomName() + "/";
    private final Semaphore pages = new Semaphore(MOST_PAGES);
    private final ExecutorService threads = Executors.newCachedThreadPool(new DaemonThreads("serve"));

    private WatchServer(HttpServer server, NewsBoard board) {
        this.server = server;
        this.board = board;
        this.paths = new ServedPaths(board);
        server.createContext("/", this::handle);
        server.setExecutor(threads);
    }

    /**
     * Begins to serve.
     *
     * @param port 0 for any that is free
     * @throws BindException if it cannot be had
     */
    static WatchServer start(int port, NewsBoard board) throws IOException {
        InetAddress here = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
        WatchServer server = new WatchServer(HttpServer.create(new InetSocketAddress(here, port), 0), board);
        server.server.start();
        return server;
    }

    private static String randomName() {
        byte[] random = new byte[PATH_BYTES];
        new SecureRandom().nextBytes(random);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }

    /** Where the page is. */
    String address() {
        return "http://127.0.0.1:" + port() + root;
    }

    private int port() {
        return server.getAddress().getPort();
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void handle(HttpExchange exchange) {
        try {
            answer(exchange);
        } catch (IOException gone) {
            // Whoever asked does not listen any more.
            return;
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        } finally {
            exchange.close();
        }
    }

    private void answer(HttpExchange exchange) throws IOException, InterruptedException {
        Optional<String> refusal = new Visitor(exchange.getRequestHeaders(), port()).refusal();
        String path = exchange.getRequestURI().getRawPath();
        if (refusal.isPresent()) {
            say(exchange, 403, refusal.get());
        } else if (path == null || !path.startsWith(root)) {
            say(exchange, 404, "there is nothing here");
        } else if (!List.of("GET", "HEAD").contains(exchange.getRequestMethod())) {
            exchange.getResponseHeaders().set("Allow", "GET, HEAD");
            say(exchange, 405, "all that is here can only be read");
        } else {
            give(exchange, path.substring(root.length()));
        }
    }

    private void give(HttpExchange exchange, String name) throws IOException, InterruptedException {
        try {
            Optional<ServedPaths.Answer> answer = paths.answer(name);
            if (answer.isPresent()) {
                send(exchange, answer.get().isSuperseded() ? 204 : 200, answer.get());
            } else if (name.equals("events") && exchange.getRequestMethod().equals("GET")) {
                follow(exchange);
            } else {
                say(exchange, 404, "there is nothing here");
            }
        } catch (RuntimeException | Error fault) {
            say(exchange, 500, "fault in the program: " + fault);
        }
    }

    private void follow(HttpExchange exchange) throws IOException, InterruptedException {
        if (!pages.tryAcquire()) {
            say(exchange, 503, "too many pages are open");
            return;
        }
        try {
            tellNews(exchange);
        } finally {
            pages.release();
        }
    }

    /** Server-sent events (WHATWG HTML, 9.2), without end: a line of JSON for all news, between them signs of life. */
    private void tellNews(HttpExchange exchange) throws IOException, InterruptedException {
        setHeaders(exchange.getResponseHeaders(), "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        OutputStream stream = exchange.getResponseBody();
        stream.write("retry: 500\n\n".getBytes(StandardCharsets.UTF_8));
        long told = 0;
        while (true) {
            Optional<NewsBoard.News> news = board.after(told, HEARTBEAT_MILLIS);
            told = news.map(NewsBoard.News::number).orElse(told);
            String event = news.map(found -> "data: " + found.json()).orElse("event: here\ndata: still");
            stream.write((event + "\n\n").getBytes(StandardCharsets.UTF_8));
            stream.flush();
        }
    }

    private static void say(HttpExchange exchange, int code, String sentence) throws IOException {
        byte[] text = (sentence + "\n").getBytes(StandardCharsets.UTF_8);
        send(exchange, code, new ServedPaths.Answer("text/plain; charset=utf-8", text));
    }

    private static void send(HttpExchange exchange, int code, ServedPaths.Answer answer) throws IOException {
        setHeaders(exchange.getResponseHeaders(), answer.type());
        boolean hasBody =
                answer.body().length > 0 && !exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(code, hasBody ? answer.body().length : -1);
        if (hasBody) {
            exchange.getResponseBody().write(answer.body());
        }
    }

    private static void setHeaders(Headers headers, String type) {
        headers.set("Content-Type", type);
        headers.set("Content-Security-Policy", POLICY);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
    }
}
