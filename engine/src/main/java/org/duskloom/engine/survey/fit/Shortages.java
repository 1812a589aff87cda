package org.duskloom.engine.survey.fit;

import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Shortage;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/** Finds out what the measured pixels of a prop cannot tell, and which further one would. */
final class Shortages {
    private Shortages() {}

    static int rankOfMeasured(Subject subject, double sigma) {
        return Extent.rank(subject.stance().template(false), measured(subject), sigma);
    }

    static int rankOfAll(Subject subject, double sigma) {
        Positions template = subject.stance().template(false);
        return Extent.rank(template, IntStream.range(0, template.size()).toArray(), sigma);
    }

    /**
     * What is missing, and the pixel that lies farthest from the point, the line or the plane of those that were
     * measured.
     */
    static Shortage of(Subject subject, double sigma) {
        int rank = rankOfMeasured(subject, sigma);
        boolean full = rank == rankOfAll(subject, sigma);
        Shortage.Kind kind = full ? Shortage.Kind.TOO_FEW : Shortage.Kind.values()[rank];
        return new Shortage(kind, farthest(subject, full ? 0 : rank));
    }

    private static int farthest(Subject subject, int rank) {
        Positions template = subject.stance().template(false);
        Moments moments = new Moments();
        boolean[] known = new boolean[template.size()];
        for (int pixel : measured(subject)) {
            known[pixel] = true;
            double x = template.x(pixel);
            double y = template.y(pixel);
            double z = template.z(pixel);
            moments.add(x, y, z, x, y, z);
        }
        Vector3d mean = moments.fromMean();
        Matrix3dc across = across(Svd3.of(moments.aboutMeans().cross()), rank);
        int farthest = 0;
        double most = -1;
        for (int i = 0; i < template.size(); i++) {
            Vector3d from = new Vector3d(template.x(i), template.y(i), template.z(i)).sub(mean);
            double square = across.transform(from, new Vector3d()).dot(from);
            if (!known[i] && square > most) {
                most = square;
                farthest = i;
            }
        }
        return farthest;
    }

    /** The projection onto what is at right angles to the first directions of a spread. */
    private static Matrix3dc across(Svd3 spread, int rank) {
        Matrix3dc u = spread.u();
        return u.scale(rank > 0 ? 0 : 1, rank > 1 ? 0 : 1, rank > 2 ? 0 : 1, new Matrix3d())
                .mul(u.transpose(new Matrix3d()), new Matrix3d());
    }

    private static int[] measured(Subject subject) {
        MeasuredProp measured = subject.measured();
        return IntStream.range(0, measured.count()).map(measured::pixel).toArray();
    }
}
