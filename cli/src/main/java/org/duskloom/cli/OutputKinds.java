package org.duskloom.cli;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.format.NpyKind;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.PortsKind;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.format.SinglesKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.packet.PacketsKind;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.preview.ContactStripKind;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.preview.ShownMoment;
import org.duskloom.engine.preview.TimeStripKind;
import org.duskloom.engine.preview.TimeTilesKind;
import org.duskloom.engine.proof.StepsKind;
import org.duskloom.engine.wire.PortMap;

/** The kinds of output that the commands choose from. */
final class OutputKinds {
    /** In the order of the help; those that need a display's ports cannot write without one. */
    static final OutputRegistry ALL = of(OutputKinds::none, CsvStyle.COMMAS, OutputKinds::none, frames -> List.of());

    private OutputKinds() {}

    /** What a shell completes. */
    static final class Words extends ArrayList<String> {
        private static final long serialVersionUID = 1L;

        Words() {
            super(ALL.kinds().stream().map(OutputKind::word).toList());
        }
    }

    /** The same kinds for a show, with tables of a style. */
    static List<OutputKind> of(LoadedShow show, List<OutputKind> kinds, CsvStyle style) {
        return bound(
                kinds,
                of(
                        () -> show.wired().wiring().orElseThrow(),
                        style,
                        show::streamSource,
                        frames -> show.cues().moments(frames, all(show), ShownFrames.USUAL_PANELS)));
    }

    private static BitSet all(LoadedShow show) {
        BitSet all = new BitSet();
        all.set(0, show.plan().pixelCount());
        return all;
    }

    /** The same kinds for a proof of some pixels, with tables of a style. */
    static List<OutputKind> of(LoadedPixels pixels, RunInfo proof, List<OutputKind> kinds, CsvStyle style) {
        return bound(
                kinds,
                of(
                        () -> pixels.wired(proof.rate()).wiring().orElseThrow(),
                        style,
                        () -> pixels.streamSource(proof.title()),
                        frames -> List.of()));
    }

    private static List<OutputKind> bound(List<OutputKind> kinds, OutputRegistry registry) {
        return kinds.stream().map(kind -> registry.kind(kind.word())).toList();
    }

    private static OutputRegistry of(
            Supplier<PortMap> wiring,
            CsvStyle style,
            Supplier<StreamSource> source,
            Function<FrameList, List<ShownMoment>> moments) {
        return new OutputRegistry(List.of(
                new RgbKind(),
                new NpyKind(),
                new SinglesKind(),
                new PortsKind(wiring, style),
                new PacketsKind(wiring, source),
                ContactStripKind.standard(moments),
                new TimeStripKind(OptionalInt.empty(), ShownFrames.USUAL_COLUMNS),
                new TimeTilesKind(),
                new StepsKind()));
    }

    private static <T> T none() {
        throw new IllegalStateException("no show");
    }
}
