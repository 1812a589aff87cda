package org.duskloom.engine.meter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The voltages along a line of pixels that is fed at any number of points. Kirchhoff's laws: both wires of a segment
 * are one resistor, each pixel draws its current whatever the voltage, each feed is an ideal source behind its lead.
 *
 * <p>With R(k) the resistance from the first pixel to pixel k, T(k) the current of all pixels up to k and P(k) the sum
 * of r(j) T(j) over the segments before k, the drop between two feeds is d(a) + C (R(k) - R(a)) - (P(k) - P(a)), where
 * C is what all feeds up to a give together. So one pass over the line gives P, the drops at the feeds solve a
 * tridiagonal system as small as there are feeds, which is factorised once, and everything else follows by that
 * formula, from the first pixel of each of its {@link LineBlocks} on. Exact, and linear in the number of pixels. Drops
 * count from the highest voltage of a source. Not safe for use by several threads.
 */
final class LineNetwork {
    private final List<Source> sources;
    private final double sourceVolts;

    /** The line: P of the formula, and R. */
    private final LineBlocks blocks;

    /** Of each pixel that is fed the block that begins with it, rising; where nothing resists between, they are one. */
    private final int[] nodeBlock;

    private final int[] nodeOfSource;

    /** A node without a lead has the volts of its source. */
    private final boolean[] isFixed;

    private final double[] fixedDrop;

    /** What the leads of a node conduct together, in siemens, and what flows through them while nothing drops. */
    private final double[] leadSiemens;

    private final double[] shortfallAmps;

    /** Of the tridiagonal system: what couples each node to the next, and the pivots of its elimination. */
    private final double[] coupling;

    private final double[] pivot;

    /** Of each node: its drop, and C of the span behind it. */
    private final double[] nodeDrop;

    private final double[] given;

    /** The drop at the first pixel of each block and at the last of all; and what flows on to the first of each. */
    private final double[] blockDrop;

    private final double[] flow;

    /**
     * A feed.
     *
     * @param pixel where on the line, from 0
     * @param ohms of its lead, there and back; 0 for none
     * @param volts of its source
     */
    public record Source(int pixel, double ohms, double volts) {}

    /**
     * A line.
     *
     * @param segmentOhms what resists from each pixel to the next, there and back; one fewer than there are pixels
     * @param sources at least one, in any order
     */
    public LineNetwork(double[] segmentOhms, List<Source> sources) {
        this.sources = List.copyOf(sources);
        this.sourceVolts = sources.stream().mapToDouble(Source::volts).max().orElseThrow();
        this.nodeOfSource = new int[sources.size()];
        int[] nodePixel = gatherNodes(segmentOhms);
        this.blocks = new LineBlocks(segmentOhms, nodePixel);
        this.nodeBlock = Arrays.stream(nodePixel).map(blocks::startingWith).toArray();
        int nodes = nodePixel.length;
        this.isFixed = new boolean[nodes];
        this.fixedDrop = new double[nodes];
        this.leadSiemens = new double[nodes];
        this.shortfallAmps = new double[nodes];
        for (int i = 0; i < nodeOfSource.length; i++) {
            add(sources.get(i), nodeOfSource[i]);
        }
        this.blockDrop = new double[blocks.count() + 1];
        this.flow = new double[blocks.count()];
        this.nodeDrop = new double[nodes];
        this.given = new double[nodes];
        this.coupling = new double[nodes];
        this.pivot = new double[nodes];
        factorise();
    }

    private int[] gatherNodes(double[] segmentOhms) {
        double[] ohmsBefore = new double[segmentOhms.length + 1];
        for (int i = 0; i < segmentOhms.length; i++) {
            ohmsBefore[i + 1] = ohmsBefore[i] + segmentOhms[i];
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing(i -> sources.get(i).pixel));
        int[] pixels = new int[order.size()];
        int nodes = 0;
        for (int i : order) {
            int pixel = sources.get(i).pixel;
            if (nodes == 0 || ohmsBefore[pixels[nodes - 1]] < ohmsBefore[pixel]) {
                pixels[nodes++] = pixel;
            }
            nodeOfSource[i] = nodes - 1;
        }
        return Arrays.copyOf(pixels, nodes);
    }

    private void add(Source source, int node) {
        if (source.ohms == 0) {
            isFixed[node] = true;
            fixedDrop[node] = sourceVolts - source.volts;
        } else {
            leadSiemens[node] += 1 / source.ohms;
            shortfallAmps[node] += (sourceVolts - source.volts) / source.ohms;
        }
    }

    private void factorise() {
        for (int i = 0; i < pivot.length; i++) {
            coupling[i] = i + 1 < pivot.length ? 1 / spanOhms(i) : 0;
            double before = i > 0 ? coupling[i - 1] : 0;
            double eliminated = i > 0 && !isFixed[i - 1] ? before * before / pivot[i - 1] : 0;
            pivot[i] = isFixed[i] ? 1 : leadSiemens[i] + coupling[i] + before - eliminated;
        }
    }

    private double spanOhms(int node) {
        return blocks.ohmsBefore(nodeBlock[node + 1]) - blocks.ohmsBefore(nodeBlock[node]);
    }

    /** The highest voltage of a source, from which drops count. */
    public double sourceVolts() {
        return sourceVolts;
    }

    /** How many pixels there are. */
    public int pixelCount() {
        return blocks.pixelCount();
    }

    /** The blocks of the line, with what their pixels draw. */
    LineBlocks blocks() {
        return blocks;
    }

    /**
     * Works out the drops while the pixels draw these currents.
     *
     * @param amps one for each pixel
     * @return what they draw together
     */
    public double solve(double[] amps) {
        double sum = blocks.take(amps);
        solveNodes(sum);
        for (int node = -1; node < nodeBlock.length; node++) {
            solveSpan(node);
        }
        int last = blocks.count() - 1;
        blockDrop[last + 1] = drop(blocks.first(last + 1));
        return sum;
    }

    private void solveNodes(double sum) {
        int last = nodeDrop.length - 1;
        for (int i = 0; i <= last; i++) {
            double right = i < last ? spanMoment(i) * coupling[i] : sum;
            double left = i > 0 ? (spanMoment(i - 1) - eliminatedDrop(i - 1)) * coupling[i - 1] : 0;
            nodeDrop[i] = isFixed[i] ? fixedDrop[i] : right - left + shortfallAmps[i];
        }
        for (int i = last; i >= 0; i--) {
            if (!isFixed[i]) {
                double next = i < last ? coupling[i] * nodeDrop[i + 1] : 0;
                nodeDrop[i] = (nodeDrop[i] + next) / pivot[i];
            }
        }
        for (int i = 0; i <= last; i++) {
            given[i] = i < last ? (nodeDrop[i + 1] - nodeDrop[i] + spanMoment(i)) * coupling[i] : sum;
        }
    }

    /** On the way down: what is known of a node's drop before those behind it are. */
    private double eliminatedDrop(int node) {
        return nodeDrop[node] / pivot[node];
    }

    private double spanMoment(int node) {
        return blocks.momentBefore(nodeBlock[node + 1]) - blocks.momentBefore(nodeBlock[node]);
    }

    /** What is behind a node; the span of -1 is what lies before the first, which nothing flows to from before. */
    private void solveSpan(int node) {
        int from = nodeBlock[Math.max(0, node)];
        double through = node < 0 ? 0 : given[node];
        double base = nodeDrop[Math.max(0, node)] - through * blocks.ohmsBefore(from) + blocks.momentBefore(from);
        int end = node + 1 < nodeBlock.length ? nodeBlock[node + 1] : blocks.count();
        for (int block = node < 0 ? 0 : from; block < end; block++) {
            blockDrop[block] = base + through * blocks.ohmsBefore(block) - blocks.momentBefore(block);
            flow[block] = through - blocks.ampsBefore(block);
        }
    }

    /** By how much the voltage at a pixel is below {@link #sourceVolts()}. */
    public double drop(int pixel) {
        int block = blocks.of(pixel);
        double drop = blockDrop[block];
        double onward = flow[block];
        for (int i = blocks.first(block); i < pixel; i++) {
            onward -= blocks.drawn(i);
            drop += blocks.segmentOhms(i) * onward;
        }
        return drop;
    }

    /** What flows on to the first pixel of a block; below 0 where it flows the other way. */
    double flow(int block) {
        return flow[block];
    }

    /** The drop at the first pixel of a block; of the block behind the last one that at the last pixel of the line. */
    double blockDrop(int block) {
        return blockDrop[block];
    }

    /** What a source gives, in the order in which they were said; below 0 where a stronger one feeds it. */
    public double sourceAmps(int index) {
        Source source = sources.get(index);
        int node = nodeOfSource[index];
        if (source.ohms > 0) {
            return (nodeDrop[node] - (sourceVolts - source.volts)) / source.ohms;
        }
        double all = given[node] - (node > 0 ? given[node - 1] : 0);
        double throughLeads = leadSiemens[node] * nodeDrop[node] - shortfallAmps[node];
        return (all - throughLeads) / unresisted(node);
    }

    /** How many sources of a node have no lead: they share evenly. */
    private int unresisted(int node) {
        int count = 0;
        for (int i = 0; i < nodeOfSource.length; i++) {
            count += nodeOfSource[i] == node && sources.get(i).ohms == 0 ? 1 : 0;
        }
        return count;
    }
}
