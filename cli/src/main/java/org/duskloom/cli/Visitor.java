package org.duskloom.cli;

import com.sun.net.httpserver.Headers;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Who asks the server of this machine. Pages of the whole world run in the same browser and may try to: by a name of
 * theirs that they let lead to this machine, or by a request from where they are.
 */
final class Visitor {
    private static final int USUAL_PORT = 80;

    private final Headers headers;
    private final List<String> hosts;

    /** @param port of the server */
    Visitor(Headers headers, int port) {
        this.headers = headers;
        this.hosts = port == USUAL_PORT
                ? List.of("127.0.0.1", "localhost", "127.0.0.1:80", "localhost:80")
                : List.of("127.0.0.1:" + port, "localhost:" + port);
    }

    /** Why this one gets nothing; empty for one from this machine's own page. */
    Optional<String> refusal() {
        List<String> asked = headers.getOrDefault("Host", List.of());
        if (asked.size() != 1 || !hosts.contains(asked.get(0).toLowerCase(Locale.ROOT))) {
            return Optional.of("this server is for 127.0.0.1 alone, and was asked as " + String.join(", ", asked));
        }
        List<String> origins = headers.getOrDefault("Origin", List.of());
        if (!origins.isEmpty() && !origins.equals(List.of("http://" + asked.get(0)))) {
            return Optional.of("this server is for its own page alone, not for one of " + String.join(", ", origins));
        }
        return isFromElsewhere()
                ? Optional.of("this server is for its own page alone, not for one from elsewhere")
                : Optional.empty();
    }

    /** Browsers say what a request is for (W3C Fetch Metadata); an address that is typed or followed is all right. */
    private boolean isFromElsewhere() {
        String site = first("Sec-Fetch-Site");
        return !List.of("", "none", "same-origin").contains(site)
                && !first("Sec-Fetch-Mode").equals("navigate");
    }

    private String first(String header) {
        return headers.getOrDefault(header, List.of("")).get(0);
    }
}
