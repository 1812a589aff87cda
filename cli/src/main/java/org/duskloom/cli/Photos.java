package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.group.NaturalOrder;
import org.duskloom.engine.locate.PictureSize;
import org.duskloom.engine.locate.Pictures;
import org.duskloom.engine.locate.PicturesRefusedException;

/** The photos of a run in natural order of their names, or the pictures of a film. */
final class Photos implements Pictures {
    private final List<PhotoFile> photos = new ArrayList<>();
    private final List<Path> files;
    private final Progress progress;
    private final PhotoFile.Room room = new PhotoFile.Room();
    private long read;

    private Photos(List<Path> files, Progress progress) {
        this.files = files;
        this.progress = progress;
    }

    /**
     * Looks at the start of every file.
     *
     * @param progress is told of each picture that was read
     */
    static Photos of(List<Path> files, Progress progress) throws IOException, PicturesRefusedException {
        Comparator<Path> byFolder =
                Comparator.comparing(file -> String.valueOf(file.getParent()), NaturalOrder.INSTANCE);
        List<Path> ordered = new ArrayList<>(files);
        ordered.sort(byFolder.thenComparing(file -> file.getFileName().toString(), NaturalOrder.INSTANCE));
        Photos photos = new Photos(ordered, progress);
        Set<Path> seen = new HashSet<>();
        for (Path file : ordered) {
            if (!seen.add(file.toAbsolutePath().normalize())) {
                throw new PicturesRefusedException(file.toString(), "is named twice", "name each picture once");
            }
            photos.add(file);
        }
        return photos;
    }

    private void add(Path file) throws IOException, PicturesRefusedException {
        PhotoFile photo = PhotoFile.open(file);
        if (!photos.isEmpty() && isHeldOtherwise(photo, photos.get(0))) {
            throw new PicturesRefusedException(
                    file.toString(),
                    "says that the camera was held otherwise than for "
                            + files.get(0).getFileName(),
                    "all pictures of a run are taken with one camera that nobody touches; take it again, or save all"
                            + " pictures anew without that note");
        }
        photos.add(photo);
    }

    /** Where pictures so come to stand upright with different sizes, that is told later. */
    private static boolean isHeldOtherwise(PhotoFile photo, PhotoFile first)
            throws IOException, PicturesRefusedException {
        return photo.orientation() != first.orientation()
                && (photo.orientation().isOnItsSide() == first.orientation().isOnItsSide()
                        || photo.size().equals(first.size()));
    }

    /** The files in the order in which they are read. */
    List<Path> files() {
        return files;
    }

    @Override
    public int count() {
        return photos.size();
    }

    @Override
    public String name(int picture) {
        return files.get(picture).toString();
    }

    @Override
    public PictureSize size(int picture) throws IOException, PicturesRefusedException {
        return photos.get(picture).size();
    }

    @Override
    public void read(int picture, byte[] codes) throws IOException, PicturesRefusedException {
        photos.get(picture).read(codes, room);
        progress.at(Math.min(++read, count()), count());
    }
}
