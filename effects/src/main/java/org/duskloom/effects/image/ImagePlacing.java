package org.duskloom.effects.image;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.area.LightField;
import org.duskloom.effects.kit.area.Placing;
import org.duskloom.effects.kit.area.Pose;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;

/** How a picture is laid over a field by the settings of {@link Image}. */
final class ImagePlacing implements Placing {
    private final Film film;
    private final String fit;
    private final Dial zoom;
    private final Dial turn;
    private final Dial right;
    private final Dial up;
    private final double[] zoomRange;

    ImagePlacing(Film film, Settings settings) {
        this.film = film;
        fit = settings.value(Image.FIT);
        zoom = Dial.of(settings, Image.ZOOM);
        turn = Dial.of(settings, Image.TURN);
        right = Dial.of(settings, Image.RIGHT);
        up = Dial.of(settings, Image.UP);
        zoomRange = zoom.keyRange();
    }

    @Override
    public boolean isStill() {
        return zoom.isConstant() && turn.isConstant() && right.isConstant() && up.isConstant();
    }

    @Override
    public double width(LightField field) {
        return fit.equals(Image.STRETCH) ? field.width() : film.width() * unitsOfAPixel(field);
    }

    @Override
    public double height(LightField field) {
        return fit.equals(Image.STRETCH) ? field.height() : film.height() * unitsOfAPixel(field);
    }

    private double unitsOfAPixel(LightField field) {
        double across = field.width() / film.width();
        double down = field.height() / film.height();
        return fit.equals(Image.COVER) ? Math.max(across, down) : Math.min(across, down);
    }

    @Override
    public double[] zoomRange(LightField field) {
        return zoomRange;
    }

    @Override
    public double anchorX() {
        return 0.5;
    }

    @Override
    public double anchorY() {
        return 0.5;
    }

    @Override
    public void pose(CueTime time, LightField field, Pose pose) {
        double times = zoom.at(time);
        pose.zoom(times);
        pose.turn(turn.at(time));
        pose.move(
                right.at(time) * (field.width() + times * width(field)) / 2,
                up.at(time) * (field.height() + times * height(field)) / 2);
    }
}
