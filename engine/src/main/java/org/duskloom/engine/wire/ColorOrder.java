package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * The order in which a pixel takes its colours from the wire: the letters R, G and B once each, and W once where the
 * pixel has a white light too.
 */
public final class ColorOrder {
    /** Red, green, blue. */
    public static final ColorOrder RGB = new ColorOrder(List.of(Channel.RED, Channel.GREEN, Channel.BLUE));

    private static final String ALLOWED = "allowed: R, G and B once each in any order, with W for a white light too";

    private final List<Channel> channels;

    private ColorOrder(List<Channel> channels) {
        this.channels = List.copyOf(channels);
    }

    /**
     * Reads {@code GRB} or {@code GRBW}; capital letters only.
     *
     * @throws TextFormatException if a letter stands twice, is missing or is another
     */
    public static ColorOrder parse(String text) throws TextFormatException {
        List<Channel> channels = new ArrayList<>();
        for (int i = 0; i < text.length(); i++) {
            channels.add(channel(text, text.charAt(i)));
            if (EnumSet.copyOf(channels).size() < channels.size()) {
                throw new TextFormatException(
                        "the colours " + Quoted.of(text) + " hold " + text.charAt(i) + " twice", ALLOWED);
            }
        }
        for (Channel needed : ColorOrder.RGB.channels) {
            if (!channels.contains(needed)) {
                throw new TextFormatException("the colours " + Quoted.of(text) + " lack " + needed.letter(), ALLOWED);
            }
        }
        return new ColorOrder(channels);
    }

    private static Channel channel(String text, char letter) throws TextFormatException {
        for (Channel channel : Channel.values()) {
            if (channel.letter() == letter) {
                return channel;
            }
        }
        throw new TextFormatException(
                "the colours " + Quoted.of(text) + " hold " + Quoted.of(String.valueOf(letter)), ALLOWED);
    }

    /** How many colours a pixel has: 3 or 4. */
    public int count() {
        return channels.size();
    }

    /** Whether a white light is among them. */
    public boolean hasWhite() {
        return channels.contains(Channel.WHITE);
    }

    /** The colours in the order of the wire. */
    List<Channel> channels() {
        return channels;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ColorOrder that && channels.equals(that.channels);
    }

    @Override
    public int hashCode() {
        return channels.hashCode();
    }

    /** The letters: {@code GRBW}. */
    @Override
    public String toString() {
        return channels.stream()
                .map(channel -> String.valueOf(channel.letter()))
                .collect(Collectors.joining());
    }
}
