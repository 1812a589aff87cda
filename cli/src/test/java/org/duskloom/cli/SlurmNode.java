package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A Slurm cluster of one node on the loopback of this machine, with a key, ports and folders of its own. Needs root.
 */
final class SlurmNode implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 240;

    private final Path folder;
    private final Deque<Process> daemons = new ArrayDeque<>();
    private Process daemon;

    interface Condition {
        boolean holds() throws Exception;
    }

    SlurmNode(Path folder) throws Exception {
        this.folder = Files.createDirectories(folder);
        for (String part : List.of("state", "spool")) {
            Files.createDirectory(folder.resolve(part));
        }
        for (Path step = folder; step != null && step.startsWith(folder.getParent()); step = step.getParent()) {
            Files.setPosixFilePermissions(step, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        byte[] key = new byte[128];
        new SecureRandom().nextBytes(key);
        Path keyFile = Files.write(folder.resolve("munge.key"), key);
        Files.setPosixFilePermissions(keyFile, PosixFilePermissions.fromString("rw-------"));
        Files.writeString(folder.resolve("slurm.conf"), configuration());
        try {
            start(
                    "munged",
                    "-F",
                    "--socket=" + folder.resolve("munge.socket"),
                    "--key-file=" + keyFile,
                    "--pid-file=" + folder.resolve("munged.pid"),
                    "--log-file=" + folder.resolve("munged.log"),
                    "--seed-file=" + folder.resolve("munged.seed"));
            waitUntil("munge listens", () -> Files.exists(folder.resolve("munge.socket")));
            start("slurmctld", "-D", "-i");
            startDaemon();
            waitUntil(
                    "the node is idle",
                    () -> run(Map.of(), List.of("sinfo", "-h", "-o", "%T")).contains("idle"));
        } catch (Exception | AssertionError fault) {
            close();
            throw fault;
        }
    }

    private String configuration() throws IOException {
        String host = host();
        return String.join(
                "\n",
                "ClusterName=garden",
                "SlurmctldHost=" + host + "(127.0.0.1)",
                "SlurmUser=root",
                "SlurmdUser=root",
                "AuthType=auth/munge",
                "AuthInfo=socket=" + folder.resolve("munge.socket"),
                "CredType=cred/munge",
                "StateSaveLocation=" + folder.resolve("state"),
                "SlurmdSpoolDir=" + folder.resolve("spool"),
                "SlurmctldPidFile=" + folder.resolve("slurmctld.pid"),
                "SlurmdPidFile=" + folder.resolve("slurmd.pid"),
                "SlurmctldLogFile=" + folder.resolve("slurmctld.log"),
                "SlurmdLogFile=" + folder.resolve("slurmd.log"),
                "SlurmctldPort=" + freePort(),
                "SlurmdPort=" + freePort(),
                "ProctrackType=proctrack/linuxproc",
                "TaskPlugin=task/none",
                "SelectType=select/cons_tres",
                "SelectTypeParameters=CR_CPU",
                "ReturnToService=2",
                "MpiDefault=none",
                "NodeName=" + host + " NodeAddr=127.0.0.1 CPUs="
                        + Runtime.getRuntime().availableProcessors() + " RealMemory=100 State=UNKNOWN",
                "PartitionName=all Nodes=ALL Default=YES MaxTime=INFINITE State=UP",
                "");
    }

    private static String host() throws IOException {
        Process process = new ProcessBuilder("hostname", "-s").start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private Process start(String... command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("SLURM_CONF", folder.resolve("slurm.conf").toString());
        Process process = builder.redirectErrorStream(true)
                .redirectOutput(folder.resolve(command[0] + "-" + daemons.size() + ".txt")
                        .toFile())
                .start();
        daemons.push(process);
        return process;
    }

    void startDaemon() throws IOException {
        daemon = start("slurmd", "-D");
    }

    /** By SIGKILL. */
    void killDaemon() throws InterruptedException {
        daemon.destroyForcibly().waitFor();
        daemons.remove(daemon);
    }

    /** The jobs in a state. */
    String jobs(String state) throws Exception {
        return run(Map.of(), List.of("squeue", "-h", "-t", state.equals("all") ? "PD,R,CG,CF,RQ,S" : state));
    }

    /** Runs a command against this cluster, in the folder of the project; gives what it printed. */
    String run(Map<String, String> environment, List<String> command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().putAll(environment);
        builder.environment().put("SLURM_CONF", folder.resolve("slurm.conf").toString());
        Process process = builder.directory(Project.ROOT.toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    void waitUntil(String what, Condition condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!condition.holds()) {
            assertThat(System.nanoTime()).as(what).isLessThan(end);
            Thread.sleep(200);
        }
    }

    @Override
    public void close() {
        while (!daemons.isEmpty()) {
            end(daemons.pop());
        }
    }

    private static void end(Process process) {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
