package org.duskloom.effects.lettering;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.area.LightField;
import org.duskloom.effects.kit.area.Placing;
import org.duskloom.effects.kit.area.Pose;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.geometry.Degrees;

/**
 * Where a line of text lies by the settings of {@link Lettering}. Unless it shall move smoothly, or changes its size,
 * or lies askew, a dot is a whole number of lights wide and high, and the line stands on whole lights.
 */
final class LetterPlacing implements Placing {
    /** A dot smaller than this share of a light is not made a light: the text would become much too large. */
    private static final double LEAST_DOT = 0.75;

    /** Places that differ by rounding only must not fall to different lights. */
    private static final double ROUNDING = 1e-6;

    private final LetterPicture picture;
    private final Motion motion;
    private final boolean still;
    private final Dial size;
    private final Dial turn;
    private final Dial toward;
    private final Dial up;
    /** Whether the text runs upward or downward. */
    private final boolean lying;

    private final boolean snapping;
    private final double[] sizeRange;

    LetterPlacing(LetterPicture picture, Motion motion, Settings settings) {
        this.picture = picture;
        this.motion = motion;
        still = settings.value(Lettering.STILL);
        size = Dial.of(settings, Lettering.SIZE);
        turn = Dial.of(settings, Lettering.TURN);
        toward = Dial.of(settings, Lettering.TOWARD);
        up = Dial.of(settings, Lettering.UP);
        lying = Degrees.cosine(turn.resting()) == 0;
        boolean upright = turn.isConstant() && (lying || Degrees.sine(turn.resting()) == 0);
        snapping = !settings.value(Lettering.SMOOTH) && upright && size.isConstant();
        sizeRange = size.keyRange();
    }

    @Override
    public boolean isStill() {
        return still && size.isConstant() && turn.isConstant() && up.isConstant();
    }

    @Override
    public double width(LightField field) {
        return picture.columns() * dot(field, lying ? field.cellHeight() : field.cellWidth());
    }

    @Override
    public double height(LightField field) {
        return picture.rows() * dot(field, lying ? field.cellWidth() : field.cellHeight());
    }

    /** The side of a dot at zoom 1, along cells of this length. */
    private double dot(LightField field, double cell) {
        double full = field.height() / picture.capitalRows();
        return isSnapped(field) ? cell * Math.max(1, Math.rint(full * size.resting() / cell)) : full;
    }

    /** Whether dots are whole lights; then the zoom is 1 whatever the size. */
    private boolean isSnapped(LightField field) {
        double dot = size.resting() * field.height() / picture.capitalRows();
        return snapping && dot >= LEAST_DOT * Math.min(field.cellWidth(), field.cellHeight());
    }

    @Override
    public double[] zoomRange(LightField field) {
        return isSnapped(field) ? new double[] {1, 1} : sizeRange;
    }

    @Override
    public double anchorX() {
        return 0.5;
    }

    @Override
    public double anchorY() {
        return picture.capitalMiddle();
    }

    @Override
    public void pose(CueTime time, LightField field, Pose pose) {
        boolean snapped = isSnapped(field);
        double zoom = snapped ? 1 : size.at(time);
        double width = width(field) * zoom;
        double height = height(field) * zoom;
        pose.zoom(zoom);
        pose.turn(turn.at(time));
        double degrees = toward.at(time);
        double passed = still ? 0 : (2 * motion.passed(time) - 1) * wayOut(field, width, height, degrees, time);
        double right = passed * Degrees.cosine(degrees);
        double upward = passed * Degrees.cosine(degrees - 90) + up.at(time) * field.height();
        if (snapped) {
            snap(right, upward, width, height, field, pose);
        } else {
            pose.move(right, upward);
        }
    }

    /** How far from the middle of the field the middle of a capital is when the line has just left. */
    private double wayOut(LightField field, double width, double height, double towardDegrees, CueTime time) {
        double wayX = Math.abs(Degrees.cosine(towardDegrees));
        double wayY = Math.abs(Degrees.cosine(towardDegrees - 90));
        double fromTurn = towardDegrees - turn.at(time);
        double along = Math.abs(Degrees.cosine(fromTurn));
        double across = Math.abs(Degrees.cosine(fromTurn - 90));
        double fromAnchor = 2 * Math.max(anchorY(), 1 - anchorY());
        return (wayX * field.width() + wayY * field.height() + along * width + across * height * fromAnchor) / 2;
    }

    /** Moves the anchor near to a place, such that the picture begins at whole lights. */
    private void snap(double right, double upward, double width, double height, LightField field, Pose pose) {
        double cosine = Degrees.cosine(turn.resting());
        double sine = Degrees.cosine(turn.resting() - 90);
        double spanX = lying ? height : width;
        double spanY = lying ? width : height;
        // Where the middle of the picture lies, as seen from its anchor.
        double fromAnchor = (anchorY() - 0.5) * height;
        pose.move(
                right + toWholeLights(right - sine * fromAnchor, spanX, field.width(), field.cellWidth()),
                upward + toWholeLights(upward + cosine * fromAnchor, spanY, field.height(), field.cellHeight()));
    }

    /** How far a span must be moved so that it begins at the edge of a cell. */
    private static double toWholeLights(double middle, double span, double fieldSpan, double cell) {
        double start = (middle - span / 2 + fieldSpan / 2) / cell;
        return (Math.floor(start + 0.5 + ROUNDING) - start) * cell;
    }
}
