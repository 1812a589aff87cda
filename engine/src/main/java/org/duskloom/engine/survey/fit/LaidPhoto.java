package org.duskloom.engine.survey.fit;

import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.PhotoAlignment;

/** A photo of which it is known how it shows the stage. */
sealed interface LaidPhoto permits PhotoFit, CameraPhoto {
    /** Where so large a share is explained, no more is asked. */
    double NEARLY_ALL = 0.95;

    /** What is told of it. */
    PhotoAlignment described();

    /** Places in the picture as places on the stage, without depth. */
    Measurements onStage(Measurements measurements);

    /**
     * Places of a prop as if it hung in the plane of another.
     *
     * @param inPicture the prop's places in the picture
     * @param hostIndex the other one
     * @return nothing where that is the same, as depth does not show
     */
    Optional<MeasuredProp> atDepthOf(MeasuredProp inPicture, int hostIndex);

    /**
     * Finds it: a similarity where that explains the picture, as one from far away and straight ahead; else a camera.
     *
     * @return nothing if fewer than 3 pixels were measured, or all at one place
     */
    static Optional<LaidPhoto> of(Measurements measurements, Display display) {
        Optional<PhotoFit> similar = PhotoFit.of(measurements, display.map());
        if (similar.isEmpty()) {
            return Optional.empty();
        }
        double floor = floor(measurements, display, similar.get().described().unitsPerPictureUnit());
        boolean isStraight = similar.get().agreeing().length > NEARLY_ALL * measurements.pixelCount()
                && similar.get().sigma() < floor;
        if (isStraight) {
            return Optional.of(similar.get());
        }
        return CameraPhoto.of(measurements, display, floor)
                .filter(camera -> camera.explainsMore(similar.get(), measurements))
                .<LaidPhoto>map(camera -> camera)
                .or(() -> similar);
    }

    /**
     * What a place in a picture is wrong by at least, in the display's unit: 3 mm, as far as anybody hangs a light from
     * where it was meant to be, or one picture pixel if that is more.
     */
    static double floor(Measurements measurements, Display display, double unitsPerPictureUnit) {
        Positions picture = PhotoFit.picture(measurements, true);
        double few = Math.min(
                3 / display.units().millimetres(), Extent.diagonal(display.map().stage()) / 200);
        // Places that were read in another unit than pixels, such as shares of the picture's width, have none.
        boolean inPixels = Extent.diagonal(picture) >= 500;
        return inPixels ? Math.max(few, unitsPerPictureUnit) : few;
    }
}
