package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Keeps copies of what it is handed. */
class KeptSink implements FrameSink {
    final List<Long> numbers = Collections.synchronizedList(new ArrayList<>());
    final List<byte[]> frames = new ArrayList<>();
    final List<String> calls = Collections.synchronizedList(new ArrayList<>());
    RunInfo run;

    /** So many of them. */
    static List<KeptSink> several(int count) {
        List<KeptSink> sinks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sinks.add(new KeptSink());
        }
        return sinks;
    }

    @Override
    public void begin(RunInfo begun) throws IOException {
        calls.add("begin");
        run = begun;
    }

    @Override
    public void take(FrameBatch batch) throws IOException {
        for (int i = 0; i < batch.count(); i++) {
            int from = batch.offset(i);
            keep(batch.frame(i), Arrays.copyOfRange(batch.rgb(), from, from + batch.frameBytes()));
        }
    }

    void keep(long frame, byte[] rgb) throws IOException {
        numbers.add(frame);
        frames.add(rgb);
    }

    @Override
    public void finish() throws IOException {
        calls.add("finish");
    }

    @Override
    public void close() {
        calls.add("close");
    }
}
