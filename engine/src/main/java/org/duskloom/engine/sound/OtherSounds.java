package org.duskloom.engine.sound;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Knows other kinds of sound by their first bytes, and the command that makes a WAV of them. */
final class OtherSounds {
    /** How many bytes are looked at. */
    static final int SNIFFED_BYTES = 64;

    /** As regular expressions over bytes as ISO 8859-1. */
    private static final Map<String, String> BY_START = new LinkedHashMap<>();

    static {
        BY_START.put("ID3", "an MP3");
        BY_START.put("\u00ff[\u00fa\u00fb\u00f2\u00f3\u00e2\u00e3]", "an MP3");
        BY_START.put("\u00ff[\u00f0\u00f1\u00f8\u00f9]", "an AAC");
        BY_START.put("OggS.{24,60}OpusHead", "an Opus");
        BY_START.put("OggS", "an OGG");
        BY_START.put("fLaC", "a FLAC");
        BY_START.put("....ftypM4A", "an M4A");
        BY_START.put("....ftyp", "an MP4");
        BY_START.put("\u001aE\u00df\u00a3", "a WebM or Matroska");
        BY_START.put("0&\u00b2u", "a WMA");
        BY_START.put("wvpk", "a WavPack");
        BY_START.put("caff", "a CAF");
        BY_START.put("RIFX....WAVE", "a big-endian WAV");
        BY_START.put("RIFF....AVI ", "an AVI");
        BY_START.put("FORM....8SVX", "an 8SVX");
    }

    private OtherSounds() {}

    /**
     * What is wrong with a file that is none of those that are read.
     *
     * @param start its first bytes
     * @param name as the user would type it
     * @param isTaken whether a file stands there already whose name is that of this one with another ending: this one
     */
    static SoundException fault(byte[] start, String name, Predicate<String> isTaken) {
        String text = new String(start, StandardCharsets.ISO_8859_1);
        if (text.isEmpty()) {
            return new SoundException("the file is empty", "save the song once more");
        }
        if (text.startsWith("MThd")) {
            return new SoundException("is MIDI: notes, and not yet a sound", "let a program play it into a WAV");
        }
        if (text.stripLeading().startsWith("{") || name.toLowerCase(Locale.ROOT).endsWith(".json")) {
            return new SoundException("is JSON, not a sound", "name the song itself: WAV, AIFF and AU are read");
        }
        return BY_START.entrySet().stream()
                .filter(kind -> text.matches("(?s)" + kind.getKey() + ".*"))
                .map(kind -> new SoundException(
                        "is " + kind.getValue() + " file; WAV, AIFF and AU are read", command(name, isTaken)))
                .findFirst()
                .orElseGet(() -> new SoundException(
                        "is no sound that is known here; WAV, AIFF and AU are read", command(name, isTaken)));
    }

    /** How a WAV is made of it, by the program that reads nearly everything. */
    private static String command(String name, Predicate<String> isTaken) {
        String ending = Stream.concat(
                        Stream.of(".wav", "-plain.wav"),
                        IntStream.iterate(2, number -> number + 1).mapToObj(number -> "-plain-" + number + ".wav"))
                .filter(isTaken.negate())
                .findFirst()
                .orElseThrow();
        String wav = bare(name) + ending;
        return "this makes a WAV of it: ffmpeg -i " + word(name) + " " + word(wav);
    }

    /** Without its ending; a dot at the start of a name begins none. */
    static String bare(String name) {
        return name.replaceFirst("(?<=[^/\\\\])\\.[^./\\\\]*$", "");
    }

    private static String word(String name) {
        return name.matches("[\\w./\\\\:-]+") ? name : '"' + name + '"';
    }
}
