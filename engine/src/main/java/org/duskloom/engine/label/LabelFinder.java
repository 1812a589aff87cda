package org.duskloom.engine.label;

import java.util.Optional;

/**
 * Finds places for labels where they cover neither pixels nor each other, each nearer to its own pixels than to any
 * others. What was found is taken from then on.
 */
public final class LabelFinder {
    private static final int DIRECTIONS = 16;
    private static final double[] DISTANCES = {1, 1.4, 2};
    private static final int LEADER_DIRECTIONS = 36;
    private static final double LEADER_GROWTH = 1.2;

    /**
     * How far from its own pixel a label is at the most, as a share of its distance from others: told apart at a
     * glance.
     */
    private static final double NEARER = 0.87;

    private final PixelField field;
    private final double pixelRadius;
    private final double letters;
    private final Area bounds;
    private final TakenAreas taken;
    private final TakenAreas lines;

    /** What a leader may lie over. */
    private enum Over {
        NOTHING,
        PIXELS,
        ANYTHING
    }

    /**
     * @param field all pixels
     * @param pixelRadius of a pixel as drawn
     * @param letters height of the capitals
     * @param bounds what labels must not leave
     */
    public LabelFinder(PixelField field, double pixelRadius, double letters, Area bounds) {
        this.field = field;
        this.pixelRadius = pixelRadius;
        this.letters = letters;
        this.bounds = bounds;
        this.taken = new TakenAreas(4 * letters);
        this.lines = new TakenAreas(4 * letters);
    }

    /** The same where labels may leave everything. */
    public LabelFinder(PixelField field, double pixelRadius, double letters) {
        this(
                field,
                pixelRadius,
                letters,
                new Area(
                        Double.NEGATIVE_INFINITY,
                        Double.NEGATIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY));
    }

    /** Marks an area that neither labels nor their leaders may cover. */
    public void take(Area area) {
        taken.take(area);
    }

    /** Marks a line that labels may not cover, and leaders may cross. */
    public void takeLine(double fromX, double fromY, double toX, double toY) {
        along(fromX, fromY, toX, toY, letters / 4, lines);
    }

    /** A free place beside the pixels; nothing if there is none. */
    public Optional<LabelPlace> beside(LabelWish wish) {
        Area box = field.boxOf(wish.span());
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                Area area = beside(box, wish, wish.clear() * distance, turns(wish, i, DIRECTIONS));
                if (isClear(area) && isNearest(area, wish.span())) {
                    return Optional.of(found(area, Optional.empty()));
                }
            }
        }
        return Optional.empty();
    }

    /** A free place anywhere, the nearer the better, with a leader; nothing if there is none within the bounds. */
    public Optional<LabelPlace> led(LabelWish wish) {
        return ledOverNothing(wish).or(() -> led(wish, Over.PIXELS)).or(() -> led(wish, Over.ANYTHING));
    }

    /** The same with a leader that crosses neither pixels nor labels nor other leaders. */
    public Optional<LabelPlace> ledOverNothing(LabelWish wish) {
        return led(wish, Over.NOTHING);
    }

    private Optional<LabelPlace> led(LabelWish wish, Over over) {
        Area box = field.boxOf(wish.span());
        double most = field.box().width() + field.box().height() + 40 * (wish.clear() + letters);
        for (double reach = wish.clear(); reach < most; reach *= LEADER_GROWTH) {
            for (int i = 0; i < LEADER_DIRECTIONS; i++) {
                Area area = offBox(box, wish, reach, turns(wish, i, LEADER_DIRECTIONS));
                if (isClear(area)) {
                    LabelPlace.Leader leader = leader(area, wish.span());
                    boolean seen = leader.length() >= letters / 2;
                    if (seen && (over == Over.ANYTHING || isFree(leader, wish.span(), over))) {
                        return Optional.of(found(area, Optional.of(leader)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static double turns(LabelWish wish, int number, int directions) {
        int side = number % 2 == 0 ? number / 2 : -(number + 1) / 2;
        return wish.firstTurns() + (double) side / directions;
    }

    private LabelPlace found(Area area, Optional<LabelPlace.Leader> leader) {
        taken.take(area.grown(letters * 0.1));
        leader.ifPresent(line -> along(line.fromX(), line.fromY(), line.toX(), line.toY(), letters / 10, taken));
        return new LabelPlace(area, leader);
    }

    /** Slides the label outward from the middle of its pixels until it is so far from all of them. */
    private Area beside(Area box, LabelWish wish, double clear, double turns) {
        Span span = wish.span();
        double directionX = StrictMath.cos(2 * Math.PI * turns);
        double directionY = StrictMath.sin(2 * Math.PI * turns);
        double way = 0;
        if (span.toExclusive() - span.from() == 1) {
            way = wayFromPoint(wish, clear, directionX, directionY);
        } else {
            for (int i = span.from(); i < span.toExclusive(); i++) {
                double x = field.x(i) - box.centreX();
                double y = field.y(i) - box.centreY();
                way = Math.max(way, wayPast(x, y, wish, clear, directionX, directionY));
            }
        }
        return Area.around(
                box.centreX() + way * directionX, box.centreY() + way * directionY, wish.width(), wish.height());
    }

    /** How far a label goes until none of it is nearer to where it started than so far. */
    private static double wayFromPoint(LabelWish wish, double clear, double directionX, double directionY) {
        double near = 0;
        double far = clear + wish.width() + wish.height();
        for (int i = 0; i < 30; i++) {
            double way = (near + far) / 2;
            Area area = Area.around(way * directionX, way * directionY, wish.width(), wish.height());
            if (area.distanceTo(0, 0) < clear) {
                near = way;
            } else {
                far = way;
            }
        }
        return far;
    }

    /** How far a label goes until a point is no longer under it or its margin; 0 if it does not come there. */
    private static double wayPast(
            double x, double y, LabelWish wish, double clear, double directionX, double directionY) {
        double halfWidth = wish.width() / 2 + clear;
        double halfHeight = wish.height() / 2 + clear;
        double leavesX = leaves(x, halfWidth, directionX);
        double leavesY = leaves(y, halfHeight, directionY);
        double leaves = Math.min(leavesX, leavesY);
        boolean reached = Math.abs(x - leaves * directionX) <= halfWidth * (1 + 1e-9)
                && Math.abs(y - leaves * directionY) <= halfHeight * (1 + 1e-9);
        return leaves > 0 && reached ? leaves : 0;
    }

    private static double leaves(double point, double half, double direction) {
        if (Math.abs(direction) < 1e-9) {
            return Math.abs(point) <= half ? Double.POSITIVE_INFINITY : 0;
        }
        return direction > 0 ? (point + half) / direction : (point - half) / direction;
    }

    /** So far from the box round its pixels. */
    private static Area offBox(Area box, LabelWish wish, double reach, double turns) {
        double x = StrictMath.cos(2 * Math.PI * turns) * (box.width() / 2 + reach + wish.width() / 2);
        double y = StrictMath.sin(2 * Math.PI * turns) * (box.height() / 2 + reach + wish.height() / 2);
        return Area.around(box.centreX() + x, box.centreY() + y, wish.width(), wish.height());
    }

    private boolean isClear(Area area) {
        return bounds.holds(area)
                && taken.isFree(area)
                && lines.isFree(area)
                && !field.isNear(area, pixelRadius + letters * 0.1);
    }

    private boolean isNearest(Area area, Span own) {
        double most = 8 * (pixelRadius + letters);
        double distance = field.distance(own, area, most);
        if (distance >= most || field.isOtherNear(own, area, distance / NEARER)) {
            return false;
        }
        Area centre = Area.around(area.centreX(), area.centreY(), 0, 0);
        double fromCentre = field.distance(own, centre, most + area.width());
        return own.toExclusive() - own.from() > 1 || !field.isOtherNear(own, centre, fromCentre);
    }

    private LabelPlace.Leader leader(Area area, Span own) {
        int pixel = field.nearest(own, area);
        double fromX = area.nearestX(field.x(pixel));
        double fromY = area.nearestY(field.y(pixel));
        double alongX = field.x(pixel) - fromX;
        double alongY = field.y(pixel) - fromY;
        double length = Math.max(1e-9, StrictMath.hypot(alongX, alongY));
        double start = Math.min(letters * 0.2, length / 4) / length;
        double end = Math.max(start, 1 - pixelRadius / length);
        return new LabelPlace.Leader(
                fromX + start * alongX, fromY + start * alongY, fromX + end * alongX, fromY + end * alongY);
    }

    private boolean isFree(LabelPlace.Leader leader, Span own, Over over) {
        int steps = (int) Math.min(2000, Math.ceil(leader.length() / (letters / 4)) + 1);
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            double x = leader.fromX() + (leader.toX() - leader.fromX()) * share;
            double y = leader.fromY() + (leader.toY() - leader.fromY()) * share;
            Area point = Area.round(x, y, letters / 8);
            if (!taken.isFree(point) || over == Over.NOTHING && field.isOtherNear(own, point, pixelRadius)) {
                return false;
            }
        }
        return true;
    }

    /** Takes a line by squares along it that a label cannot slip through. */
    private static void along(double fromX, double fromY, double toX, double toY, double half, TakenAreas areas) {
        double length = StrictMath.hypot(toX - fromX, toY - fromY);
        int steps = (int) Math.min(4000, Math.ceil(length / (3 * half)) + 1);
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            areas.take(Area.round(fromX + (toX - fromX) * share, fromY + (toY - fromY) * share, half));
        }
    }
}
