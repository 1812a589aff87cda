package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads the chains of one display, and sees to it that each pixel is on one line only. */
final class ChainReader {
    private static final Pattern SKIP_AS_TEXT = Pattern.compile("skip[ :=]*([0-9]{1,6})", Pattern.CASE_INSENSITIVE);

    private final GroupTree groups;
    private final Problems problems;

    /** The place where each pixel is put on a line; nothing where it is on none. */
    private final Use[] useOfPixel;

    private record Use(String port, Location location) {}

    ChainReader(GroupTree groups, Problems problems) {
        this.groups = groups;
        this.problems = problems;
        this.useOfPixel = new Use[groups.map().pixelCount()];
    }

    /**
     * A chain.
     *
     * @param port the name of its port
     * @return its links; nothing if one of them is wrong, or is of a prop that is
     */
    Optional<List<Link>> read(String port, ListNode chain) {
        int errorsBefore = problems.errorCount();
        List<Link> links = new ArrayList<>();
        for (Node item : chain.items()) {
            if (item instanceof ObjectNode) {
                dark(item, port).ifPresent(links::add);
            } else {
                Expected.text(item, "an item of \"chain\" of port " + Quoted.of(port), problems)
                        .ifPresent(address -> links.addAll(lit(address)));
            }
        }
        links.forEach(link -> claim(port, link));
        return problems.errorCount() == errorsBefore && isKnown(chain, links) ? Optional.of(links) : Optional.empty();
    }

    /**
     * Whether it is certain how many pixels a chain has. Something is wrong already with props whose pixels are not
     * known, and parts and groups may lack those of such props without a word.
     */
    private boolean isKnown(ListNode chain, List<Link> links) {
        return groups.isComplete()
                || chain.items().stream().noneMatch(this::isPartOrGroup)
                        && links.stream().allMatch(link -> link.isDark() || groups.isComplete(link.propIndex()));
    }

    private boolean isPartOrGroup(Node item) {
        return item instanceof TextNode address
                && (address.value().indexOf('/') >= 0
                        || !groups.groupsNamedBy(List.of(address)).isEmpty());
    }

    private Optional<Link> dark(Node item, String port) {
        return Fields.of(item, PortFields.DARK, "an object in \"chain\" of port " + Quoted.of(port), problems)
                .flatMap(fields -> fields.given(PortFields.SKIP))
                .map(count -> {
                    int[] pixels = new int[count.intValue()];
                    Arrays.fill(pixels, Link.DARK);
                    return new Link("", -1, pixels, item.location());
                });
    }

    private List<Link> lit(TextNode address) {
        Matcher skip = SKIP_AS_TEXT.matcher(address.value());
        if (skip.matches() && !groups.isHead(address.value())) {
            long allowed = Math.max(1, Math.min(PortFields.MOST_SKIPPED, Long.parseLong(skip.group(1))));
            problems.error(
                    address.location(),
                    "there is no prop and no group " + Quoted.of(address.value()),
                    "pixels that stay dark are written {" + Quoted.of(PortFields.SKIP.name()) + ": " + allowed + "}");
            return List.of();
        }
        List<Member> members = groups.resolve(List.of(address), problems).orElse(List.of());
        return members.stream()
                .map(member -> new Link(member.name(), member.propIndex(), member.pixels(), address.location()))
                .toList();
    }

    private void claim(String port, Link link) {
        Map<Use, int[]> twice = new LinkedHashMap<>();
        Use use = new Use(port, link.location());
        for (int pixel : link.isDark() ? new int[0] : link.pixels()) {
            if (useOfPixel[pixel] == null) {
                useOfPixel[pixel] = use;
            } else {
                int[] firstAndCount = twice.computeIfAbsent(useOfPixel[pixel], first -> new int[] {pixel, 0});
                firstAndCount[1]++;
            }
        }
        twice.forEach((first, firstAndCount) -> refuse(use, first, firstAndCount[0], firstAndCount[1]));
    }

    private void refuse(Use use, Use first, int pixel, int count) {
        Prop prop = groups.map().props().get(groups.map().propIndexOf(pixel));
        String which = "pixel " + (pixel - prop.firstPixel() + 1) + " of " + Quoted.of(prop.name())
                + (count == 1 ? " is" : " and " + (count - 1) + " more are");
        String where = first.port.equals(use.port)
                ? " on port " + Quoted.of(use.port) + " twice"
                : " on two ports: " + Quoted.of(first.port) + " and " + Quoted.of(use.port);
        problems.error(
                use.location, which + where, "the first time at " + first.location + "; a pixel has one data line");
    }
}
