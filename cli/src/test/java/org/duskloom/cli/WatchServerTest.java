package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who gets what, word for word as it goes over the line (RFC 9112). */
class WatchServerTest {
    @TempDir
    private static Path folder;

    private static Watching watching;
    private static URI address;

    @BeforeAll
    static void serve() throws IOException {
        watching = Watching.of(Garden.in(folder));
        address = URI.create(watching.address());
    }

    @AfterAll
    static void end() {
        watching.close();
    }

    private static String host() {
        return "127.0.0.1:" + address.getPort();
    }

    /** The whole answer to some lines, in which HOST and ROOT stand for those of the address. */
    private static String answer(String... lines) throws IOException {
        return answerOf(
                address.getPort(),
                String.join("\r\n", lines).replace("HOST", host()).replace("ROOT", address.getPath()));
    }

    private static String answerOf(Watching other, String path) throws IOException {
        int port = URI.create(other.address()).getPort();
        return answerOf(port, "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close");
    }

    private static String answerOf(int port, String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
            socket.getOutputStream().write((request + "\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            socket.setSoTimeout(10_000);
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    private static String get(String path, String... headers) throws IOException {
        List<String> lines = new ArrayList<>(List.of("GET " + path + " HTTP/1.1", "Host: HOST", "Connection: close"));
        lines.addAll(List.of(headers));
        return answer(lines.toArray(String[]::new));
    }

    @Test
    void thePageIsServedUnderAPathThatNobodyGuesses() throws IOException {
        assertThat(address.getHost()).isEqualTo("127.0.0.1");
        // 16 bytes of chance in base64url (RFC 4648) are 22 letters.
        assertThat(address.getPath()).matches("/[A-Za-z0-9_-]{22}/");
        String page = get("ROOT");
        assertThat(page)
                .startsWith("HTTP/1.1 200 OK\r\n")
                .containsIgnoringCase("Content-Type: text/html; charset=utf-8\r\n")
                .containsIgnoringCase("Cache-Control: no-store\r\n")
                .containsIgnoringCase("X-Content-Type-Options: nosniff\r\n")
                .containsIgnoringCase("Referrer-Policy: no-referrer\r\n")
                .containsIgnoringCase("Cross-Origin-Resource-Policy: same-origin\r\n")
                .contains("default-src 'none';", "connect-src 'self';", "frame-ancestors 'none'")
                .contains("<!doctype html>", "new LiveShow(player)")
                .doesNotContain("id=\"facts\"", "src=\"", "rel=\"stylesheet\"");
        try (Watching other = Watching.of(folder.resolve("show.json"))) {
            assertThat(URI.create(other.address()).getPath()).isNotEqualTo(address.getPath());
        }
    }

    /** Each of them could hold a thread. */
    @Test
    void whoeverAsksInHalvesManyTimesIsCutOff() throws Exception {
        try (Watching other = Watching.of(folder.resolve("show.json"))) {
            int port = URI.create(other.address()).getPort();
            List<Socket> halves = new ArrayList<>();
            try {
                for (int i = 0; i < 300; i++) {
                    halves.add(new Socket(InetAddress.getByName("127.0.0.1"), port));
                }
                // Those above the limit were never answered; they read the end, or are reset.
                assertThat(isCutOff(halves.get(299))).isTrue();
                assertThat(isCutOff(halves.get(0))).isFalse();
            } finally {
                for (Socket half : halves) {
                    half.close();
                }
            }
            for (int tries = 0; tries < 100 && serverIsFull(other); tries++) {
                Thread.sleep(100);
            }
            assertThat(serverIsFull(other)).isFalse();
        }
    }

    private static boolean isCutOff(Socket socket) throws IOException {
        socket.setSoTimeout(3000);
        try {
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException kept) {
            return false;
        } catch (SocketException reset) {
            return true;
        }
    }

    private static boolean serverIsFull(Watching other) {
        try {
            return !answerOf(other, URI.create(other.address()).getPath()).startsWith("HTTP/1.1 200 ");
        } catch (IOException cutOff) {
            return true;
        }
    }

    /** A name that leads here without our doing, of whatever page: what is called DNS rebinding. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "garden.example",
                "garden.example:PORT",
                "127.0.0.1",
                "127.0.0.1:1",
                "localhost",
                "127.0.0.2:PORT",
                "127.0.0.1:PORT.garden.example",
                "0.0.0.0:PORT",
                "[::1]:PORT",
                " "
            })
    void whoeverCallsItByAnotherNameIsRefused(String name) throws IOException {
        String host = "Host: " + name.replace("PORT", Integer.toString(address.getPort()));
        assertThat(answer("GET ROOT HTTP/1.1", host, "Connection: close")).startsWith("HTTP/1.1 403 ");
    }

    @Test
    void whoeverDoesNotSayWhomTheyCallIsRefused() throws IOException {
        assertThat(answer("GET ROOT HTTP/1.0")).matches("(?s)HTTP/1.1 40[03] .*");
        assertThat(answer("GET ROOT HTTP/1.1", "Host: HOST", "Host: garden.example", "Connection: close"))
                .matches("(?s)HTTP/1.1 40[03] .*");
        assertThat(answer("GET http://HOST" + "ROOT HTTP/1.1", "Host: garden.example", "Connection: close"))
                .startsWith("HTTP/1.1 403 ");
    }

    @Test
    void localhostIsThisMachineToo() throws IOException {
        String host = "Host: LocalHost:" + address.getPort();
        assertThat(answer("GET ROOT HTTP/1.1", host, "Connection: close")).startsWith("HTTP/1.1 200 ");
    }

    /** WHATWG Fetch: a page's own Origin is scheme, host and port; that of a file or a sandbox is null. */
    @ParameterizedTest
    @CsvSource({
        "http://HOST, 200",
        "https://HOST, 403",
        "http://garden.example, 403",
        "http://127.0.0.1, 403",
        "http://127.0.0.1:1, 403",
        "null, 403",
        "http://HOST.garden.example, 403"
    })
    void anotherOriginIsRefused(String origin, int code) throws IOException {
        for (String path : List.of("ROOT", "ROOTfilms/1", "ROOTfilms/1/0")) {
            assertThat(get(path, "Origin: " + origin)).startsWith("HTTP/1.1 " + code + " ");
        }
    }

    /** W3C Fetch Metadata: what a page of elsewhere embeds is refused, a link that is followed is not. */
    @ParameterizedTest
    @CsvSource({
        "same-origin, cors, 200",
        "none, navigate, 200",
        "cross-site, navigate, 200",
        "cross-site, no-cors, 403",
        "same-site, no-cors, 403",
        "cross-site, websocket, 403"
    })
    void whatAPageOfElsewhereEmbedsIsRefused(String site, String mode, int code) throws IOException {
        assertThat(get("ROOT", "Sec-Fetch-Site: " + site, "Sec-Fetch-Mode: " + mode))
                .startsWith("HTTP/1.1 " + code + " ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/show.json",
                "/index.html",
                "/favicon.ico",
                "/ROOT",
                "ROOTshow.json",
                "ROOTmap.csv",
                "ROOT../show.json",
                "ROOT../../../../etc/passwd",
                "ROOT%2e%2e/show.json",
                "ROOT..%2fshow.json",
                "ROOTfilms",
                "ROOTfilms/",
                "ROOTfilms/0",
                "ROOTfilms/2",
                "ROOTfilms/-1",
                "ROOTfilms/1/3",
                "ROOTfilms/1/-1",
                "ROOTfilms/1/999999999",
                "ROOTfilms/1/0/0",
                "ROOTfilms/99999999999999999999",
                "ROOTtables/2",
                "ROOTsounds/0",
                "ROOTsounds/1",
                "ROOTtables/1/0",
                "ROOTevents/",
                "ROOTpage.html",
                "ROOTfilm/page.html"
            })
    void whatIsNotThereIsNotFound(String path) throws IOException {
        String answer = get(path);
        assertThat(answer).startsWith("HTTP/1.1 404 ");
        assertThat(answer.length()).isLessThan(900);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "PATCH"})
    void nothingCanBeChanged(String method) throws IOException {
        assertThat(answer(method + " ROOT HTTP/1.1", "Host: HOST", "Content-Length: 0", "Connection: close"))
                .startsWith("HTTP/1.1 405 ")
                .containsIgnoringCase("Allow: GET, HEAD\r\n");
    }

    @Test
    void theHeadAloneIsTheSameWithoutTheBody() throws IOException {
        assertThat(answer("HEAD ROOT HTTP/1.1", "Host: HOST", "Connection: close"))
                .startsWith("HTTP/1.1 200 ")
                .endsWith("\r\n\r\n");
        assertThat(answer("HEAD ROOTevents HTTP/1.1", "Host: HOST", "Connection: close"))
                .startsWith("HTTP/1.1 404 ");
    }

    /** 80 frames are two pieces of 32 and one of 16; the garden has 20 pixels, eight columns of four bytes each. */
    @Test
    void theFilmItsTableAndItsPiecesAreServed() throws IOException {
        assertThat(get("ROOTfilms/1"))
                .startsWith("HTTP/1.1 200 ")
                .contains(
                        "\"title\": \"Longest day\"",
                        "\"table\": 1, \"sound\": 0,",
                        "\"pieceFrames\": 32, \"keyDigits\": 32")
                .containsPattern("\"keys\": \"[0-9a-f]{96}\"");
        assertThat(get("ROOTtables/1")).startsWith("HTTP/1.1 200 ").containsIgnoringCase("Content-Length: 640\r\n");
        assertThat(get("ROOTfilms/1/2")).startsWith("HTTP/1.1 200 ");
    }

    /** WHATWG HTML, server-sent events: lines of fields, an empty line after each event. */
    @Test
    void newsAreToldAsTheyCome() throws Exception {
        Path show = Garden.in(folder.resolve("other"));
        try (Watching other = Watching.of(show);
                Socket socket =
                        new Socket("127.0.0.1", URI.create(other.address()).getPort())) {
            String path = URI.create(other.address()).getPath();
            socket.getOutputStream()
                    .write(("GET " + path + "events HTTP/1.1\r\nHost: 127.0.0.1:" + socket.getPort() + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            socket.setSoTimeout(20_000);
            BufferedReader lines =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            assertThat(next(lines, "Content-type")).isEqualToIgnoringCase("Content-type: text/event-stream");
            assertThat(next(lines, "retry:")).isEqualTo("retry: 500");
            assertThat(next(lines, "data:")).startsWith("data: {\"film\": 1, \"errors\": 0");
            Files.writeString(show, Files.readString(show).replace("\"sweep\"", "\"sweap\""));
            assertThat(next(lines, "data:")).contains("\"film\": 1, \"errors\": 1", "sweap");
            Files.writeString(show, Files.readString(show).replace("\"sweap\"", "\"sweep\""));
            assertThat(next(lines, "data:")).contains("\"film\": 2, \"errors\": 0");
            // A page asks for the old one until it has heard of the new one: that is no mistake.
            for (String old : List.of("films/1", "films/1/0")) {
                assertThat(answerOf(other, path + old)).startsWith("HTTP/1.1 204 ");
            }
            assertThat(answerOf(other, path + "films/3")).startsWith("HTTP/1.1 404 ");
            assertThat(answerOf(other, path + "tables/1")).startsWith("HTTP/1.1 200 ");
            // Signs of life, five seconds after each other.
            assertThat(next(lines, "event:")).isEqualTo("event: here");
            assertThat(next(lines, "data:")).isEqualTo("data: still");
        }
    }

    private static String next(BufferedReader lines, String start) throws IOException {
        String line = lines.readLine();
        while (line != null && !line.toLowerCase(Locale.ROOT).startsWith(start.toLowerCase(Locale.ROOT))) {
            line = lines.readLine();
        }
        return line;
    }

    /** Other machines have nothing to connect to. */
    @Test
    void onlyThisMachineIsListenedTo() throws IOException {
        InetAddress outside = InetAddress.getByName("127.0.0.2");
        // The port is free there: whoever listens everywhere has it there too.
        try (ServerSocket socket = new ServerSocket()) {
            socket.setReuseAddress(false);
            socket.bind(new InetSocketAddress(outside, address.getPort()));
            assertThat(socket.isBound()).isTrue();
        }
    }
}
