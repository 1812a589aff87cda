package org.duskloom.cli;

import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code A..B}: the frames from A up to but not including B. */
final class FrameRange implements ITypeConverter<FrameSpan> {
    private static final String ALLOWED = "write A..B for the frames from A up to but not including B, such as 0..480";

    FrameRange() {}

    @Override
    public FrameSpan convert(String text) {
        int dots = text.indexOf("..");
        if (dots < 0) {
            throw new TypeConversionException("'" + text + "' is not a range of frames; " + ALLOWED);
        }
        long first = number(text, text.substring(0, dots));
        long end = number(text, text.substring(dots + 2));
        if (end <= first) {
            throw new TypeConversionException("'" + text + "' holds no frame; " + ALLOWED);
        }
        return new FrameSpan(first, end);
    }

    private static long number(String range, String digits) {
        try {
            if (!digits.isEmpty() && digits.chars().allMatch(digit -> digit >= '0' && digit <= '9')) {
                return Long.parseLong(digits);
            }
        } catch (NumberFormatException tooLong) {
            // Said below.
        }
        throw new TypeConversionException("'" + range + "' is not a range of frames; " + ALLOWED);
    }
}
