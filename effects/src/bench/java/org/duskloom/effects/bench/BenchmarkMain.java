package org.duskloom.effects.bench;

import org.duskloom.engine.effect.EffectRegistry;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs JMH with the options of its command line, over every installed effect, and every setting that moves, unless these name
 * some. */
public final class BenchmarkMain {
    private BenchmarkMain() {}

    /** Runs the benchmarks. */
    public static void main(String[] args) throws CommandLineOptionException, RunnerException {
        CommandLineOptions given = new CommandLineOptions(args);
        ChainedOptionsBuilder options = new OptionsBuilder().parent(given);
        if (!given.getParameter("effect").hasValue()) {
            options.param("effect", EffectRegistry.installed().names().toArray(String[]::new));
        }
        if (!given.getParameter("moving").hasValue()) {
            options.param("moving", MovingLook.names());
        }
        new Runner(options.build()).run();
    }
}
