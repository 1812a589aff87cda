package org.duskloom.effects.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How long the processors were busy for this process, in all its threads; JMH shows it beside the time that went by. */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.EVENTS)
public class ProcessorTime {
    private static final OperatingSystemMXBean SYSTEM =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private long start;

    /** In this iteration, in milliseconds. */
    public double cpuMillis;

    /** Begins an iteration. */
    @Setup(Level.Iteration)
    public void begin() {
        cpuMillis = 0;
    }

    void start() {
        start = SYSTEM.getProcessCpuTime();
    }

    void stop() {
        cpuMillis += (SYSTEM.getProcessCpuTime() - start) / 1e6;
    }
}
