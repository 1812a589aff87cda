package org.duskloom.cli;

import org.duskloom.engine.text.Counted;
import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * One of several shards of a show, which are as even as can be and have every frame once.
 *
 * @param number which of them, from 1
 * @param count how many there are
 */
record ShardNumber(int number, int count) {
    private static final int MOST = 1_000_000;

    /**
     * Its frames.
     *
     * @param frameCount how many frames the show has
     * @throws MisuseException if there are fewer frames than shards
     */
    FrameSpan frames(long frameCount) {
        if (frameCount < count) {
            throw new MisuseException("--shard " + this + ": the show has " + Counted.of(frameCount, "frame")
                    + "; allowed: at most as many shards");
        }
        return new FrameSpan(frameCount * (number - 1) / count, frameCount * number / count);
    }

    /** {@code I/N}. */
    @Override
    public String toString() {
        return number + "/" + count;
    }

    /** Reads {@code I/N}. */
    static final class Converter implements ITypeConverter<ShardNumber> {
        Converter() {}

        @Override
        public ShardNumber convert(String text) {
            if (text.matches("[0-9]{1,7}/[0-9]{1,7}")) {
                int slash = text.indexOf('/');
                int number = Integer.parseInt(text.substring(0, slash));
                int count = Integer.parseInt(text.substring(slash + 1));
                if (number >= 1 && number <= count && count <= MOST) {
                    return new ShardNumber(number, count);
                }
            }
            throw new TypeConversionException(
                    "'" + text + "' is no shard; write I/N for the I-th of N, such as 1/4 to 4/4");
        }
    }
}
