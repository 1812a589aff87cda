package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;

/** Frames that follow from their numbers. */
final class CountedFrames implements FrameSource {
    static final int PIXELS = 7;
    static final int FRAMES = 1000;

    final AtomicLong read = new AtomicLong();
    final AtomicInteger opened = new AtomicInteger();
    final AtomicInteger closed = new AtomicInteger();
    final Set<Thread> threads = ConcurrentHashMap.newKeySet();
    final Set<Integer> arrays = ConcurrentHashMap.newKeySet();
    volatile IOException failure;
    volatile boolean closeFailures;
    volatile CountDownLatch together = new CountDownLatch(0);

    /** All of its frames. */
    static FrameList all() {
        return FrameList.of(new FrameSpan(0, FRAMES));
    }

    /** What a frame holds. */
    static byte[] expected(long frame) {
        byte[] rgb = new byte[3 * PIXELS];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = (byte) (31 * frame + 7 * i);
        }
        return rgb;
    }

    @Override
    public RunInfo info() {
        return RunInfo.ofWhole("Pond", FrameRate.of(40), FRAMES, FramePixels.unnamed(PIXELS));
    }

    @Override
    public FrameReader reader() {
        int number = opened.incrementAndGet();
        return new FrameReader() {
            @Override
            public void read(long frame, byte[] rgb, int offset) throws IOException {
                if (failure != null) {
                    throw failure;
                }
                together.countDown();
                Waits.await(together);
                threads.add(Thread.currentThread());
                arrays.add(System.identityHashCode(rgb));
                System.arraycopy(expected(frame), 0, rgb, offset, 3 * PIXELS);
                read.incrementAndGet();
            }

            @Override
            public void close() throws IOException {
                closed.incrementAndGet();
                if (closeFailures) {
                    throw new IOException("reader " + number);
                }
            }
        };
    }
}
