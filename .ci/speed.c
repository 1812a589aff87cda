/*
 * The show that .ci/speed measures, in plain C: the same bytes as `duskloom render` writes into frames.rgb, computed as
 * plainly as C allows. Nothing is read, checked or digested here; places of pixels are made up, and `map` and `show`
 * write them, and the timeline, for the program in Java.
 *
 *   speed map PIXELS                              a map as CSV
 *   speed show FRAMES                             a timeline as JSON, which names the map map.csv
 *   speed render PIXELS FRAMES THREADS FILE       the frames
 *
 * Floats must not be contracted (-ffp-contract=off): bytes are to be the same.
 */
#define _GNU_SOURCE
#include <fcntl.h>
#include <math.h>
#include <pthread.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { RATE = 40, COLORS = 7, PIECES = COLORS - 1, TILE = 2048, MOST_THREADS = 64 };

static const int STOPS[COLORS] = {0x1b2a6b, 0x7b3fa0, 0xff9e5e, 0x2e8b57, 0xffd700, 0x4169e1, 0xf08080};
static const float OPACITY = 0.9f;

static int pixels, threads;
static long frames;
static int file;

/* What does not change with the time, by pixel. */
static double *xs, *ys;
static float *bands, *arms, *offsets;
static uint32_t *lit_keys;

/* The palette of the sweep: what each piece adds on the way into it. */
static float starts[PIECES], widths[PIECES], base[3], c1[3][PIECES], c2[3][PIECES], c3[3][PIECES];
static int clipped[3];
static float gold[3];
static uint32_t code_table[1 << 16];

static void fail(const char *what) {
    perror(what);
    exit(1);
}

/* --- random draws: SplitMix64, FNV-1a, the finaliser of MurmurHash3 --- */

static uint64_t mix64(uint64_t z) {
    z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9u;
    z = (z ^ z >> 27) * 0x94D049BB133111EBu;
    return z ^ z >> 31;
}

static uint64_t combine(uint64_t key, uint64_t value) {
    const uint64_t gamma = 0x9E3779B97F4A7C15u;
    return mix64((key ^ mix64(value + gamma)) + gamma);
}

static uint64_t of_name(const char *name) {
    uint64_t hash = 0xCBF29CE484222325u;
    for (; *name; name++) hash = (hash ^ (unsigned char)*name) * 0x100000001B3u;
    return hash;
}

static inline uint32_t finish(uint32_t v) {
    v = (v ^ v >> 16) * 0x85EBCA6Bu;
    v = (v ^ v >> 13) * 0xC2B2AE35u;
    return v ^ v >> 16;
}

static inline uint32_t draw(uint32_t key, uint32_t counter) {
    return finish(key ^ finish(counter + 0x9E3779B9u));
}

/* --- the places of the pixels: scattered, the same ones every time --- */

static double place(int pixel, int axis) {
    return (double)(combine(pixel, axis) % 1000001) / 10000.0;
}

/* --- colours --- */

static double linear(int code) {
    double v = code / 255.0;
    return (float)(v <= 0.04045 ? v / 12.92 : pow((v + 0.055) / 1.055, 2.4));
}

static double encoded(double v) {
    return v <= 0.0031308 ? 12.92 * v : 1.055 * pow(v, 1 / 2.4) - 0.055;
}

static void after(const double a[9], const double b[9], double r[9]) {
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++) r[3 * i + j] = a[3 * i] * b[j] + a[3 * i + 1] * b[3 + j] + a[3 * i + 2] * b[6 + j];
}

static double row(const double *m, int i, const double *v) {
    return m[3 * i] * v[0] + m[3 * i + 1] * v[1] + m[3 * i + 2] * v[2];
}

static const double XYZ_FROM_RGB[9] = {506752 / 1228815.0, 87881 / 245763.0,  12673 / 70218.0,
                                       87098 / 409605.0,   175762 / 245763.0, 12673 / 175545.0,
                                       7918 / 409605.0,    87881 / 737289.0,  1001167 / 1053270.0};
static const double CONES_FROM_XYZ[9] = {0.8190224379967030, 0.3619062600528904, -0.1288737815209879,
                                         0.0329836539323885, 0.9292868615863434, 0.0361446663506424,
                                         0.0481771893596242, 0.2642395317527308, 0.6335478284694309};
static const double LAB_FROM_ROOTS[9] = {0.2104542683093140, 0.7936177747023054,  -0.0040720430116193,
                                         1.9779985324311684, -2.4285922420485799, 0.4505937096174110,
                                         0.0259040424655478, 0.7827717124575296,  -0.8086757549230774};
static const double ROOTS_FROM_LAB[9] = {1, 0.3963377773761749,  0.2158037573099136,
                                         1, -0.1055613458156586, -0.0638541728258133,
                                         1, -0.0894841775298119, -1.2914855480194092};
static const double XYZ_FROM_CONES[9] = {1.2268798758459243,  -0.5578149944602171, 0.2813910456659647,
                                         -0.0405757452148008, 1.1122868032803170,  -0.0717110580655164,
                                         -0.0763729366746601, -0.4214933324022432, 1.5869240198367816};
static const double RGB_FROM_XYZ[9] = {12831 / 3959.0,      -329 / 214.0,       -1974 / 3959.0,
                                       -851781 / 878810.0,  1648619 / 878810.0, 36519 / 878810.0,
                                       705 / 12673.0,       -2585 / 12673.0,    705 / 667.0};

static void roots_of(int color, double roots[3]) {
    double cones_from_rgb[9], rgb[3] = {linear(color >> 16), linear(color >> 8 & 255), linear(color & 255)}, cones[3];
    after(CONES_FROM_XYZ, XYZ_FROM_RGB, cones_from_rgb);
    for (int i = 0; i < 3; i++) cones[i] = cbrt(row(cones_from_rgb, i, rgb));
    double lab[3];
    for (int i = 0; i < 3; i++) lab[i] = row(LAB_FROM_ROOTS, i, cones);
    for (int i = 0; i < 3; i++) roots[i] = row(ROOTS_FROM_LAB, i, lab);
}

static double cubic(const double *c, double x) {
    return c[0] + x * (c[1] + x * (c[2] + x * c[3]));
}

static double greatest(const double *c, double width) {
    double most = fmax(c[0], cubic(c, width)), disc = c[2] * c[2] - 3 * c[3] * c[1];
    if (disc < 0) return most;
    double sum = -(c[2] + copysign(sqrt(disc), c[2])), at[2] = {sum / (3 * c[3]), c[1] / sum};
    for (int i = 0; i < 2; i++)
        if (at[i] > 0 && at[i] < width) most = fmax(most, cubic(c, at[i]));
    return most;
}

/* Between two stops each channel is a cubic polynomial: the cube roots of OKLab's cones go straight. */
static void prepare_palette(void) {
    double rgb_from_cones[9], exact[3][PIECES][4], width[PIECES];
    after(RGB_FROM_XYZ, XYZ_FROM_CONES, rgb_from_cones);
    for (int p = 0; p < PIECES; p++) {
        double from[3], to[3], cube[4][3], start = p / (double)PIECES, end = (p + 1) / (double)PIECES;
        roots_of(STOPS[p], from);
        roots_of(STOPS[p + 1], to);
        width[p] = end - start;
        for (int i = 0; i < 3; i++) {
            double way = to[i] - from[i];
            cube[0][i] = from[i] * from[i] * from[i];
            cube[1][i] = 3 * from[i] * from[i] * way;
            cube[2][i] = 3 * from[i] * way * way;
            cube[3][i] = way * way * way;
        }
        double slope = 1 / width[p], power = 1;
        for (int t = 0; t < 4; t++, power *= slope)
            for (int c = 0; c < 3; c++) exact[c][p][t] = power * row(rgb_from_cones, c, cube[t]);
        float nearest = (float)start;
        starts[p] = nearest < start ? nextafterf(nearest, 2) : nearest;
        widths[p] = (float)width[p];
    }
    for (int c = 0; c < 3; c++) {
        double least = 1e9, most = -1e9;
        for (int p = 0; p < PIECES; p++) {
            double turned[4];
            for (int t = 0; t < 4; t++) turned[t] = -exact[c][p][t];
            most = fmax(most, greatest(exact[c][p], width[p]));
            least = fmin(least, -greatest(turned, width[p]));
        }
        double below = least < 4e-6 ? 4e-6 : 0, above = most > 1 - 4e-6 ? 4e-6 : 0, stretch = 1 + below + above;
        clipped[c] = below > 0 || above > 0;
        base[c] = (float)(exact[c][0][0] * stretch - below);
        for (int p = 0; p < PIECES; p++) {
            c1[c][p] = (float)(exact[c][p][1] * stretch);
            c2[c][p] = (float)(exact[c][p][2] * stretch);
            c3[c][p] = (float)(exact[c][p][3] * stretch);
        }
    }
    gold[0] = (float)linear(255), gold[1] = (float)linear(215), gold[2] = (float)linear(0);
}

static int exact_code(uint32_t bits) {
    float v;
    memcpy(&v, &bits, 4);
    return (int)floor(255 * encoded(v) + 0.5);
}

/* A cell of 2^16 floats holds at most one where the code rises: the sum with the low bits carries from there on. */
static void prepare_codes(void) {
    uint32_t first = 0x39000000u >> 16, last = 0x3F800000u >> 16;
    for (uint32_t cell = first; cell <= last; cell++) {
        uint32_t low = cell << 16, high = low | 0xFFFF, code = exact_code(low), carry = 0;
        if (exact_code(high) > (int)code) {
            while (high - low > 1) {
                uint32_t middle = low + (high - low) / 2;
                if (exact_code(middle) > (int)code) high = middle; else low = middle;
            }
            carry = 0x10000 - (high & 0xFFFF);
        }
        code_table[cell] = (code << 16) + carry;
    }
    for (uint32_t cell = last + 1; cell < 0x8000; cell++) code_table[cell] = 255u << 16;
}

/* --- patterns --- */

static double fraction(double v) {
    double f = v - floor(v);
    return f < 1 ? f : 0;
}

static double box(double *v) {
    double low = INFINITY, high = -INFINITY;
    for (int i = 0; i < pixels; i++) low = fmin(low, v[i]), high = fmax(high, v[i]);
    double half = (high - low) / 2, centre = low + half;
    for (int i = 0; i < pixels; i++) v[i] -= centre;
    return half;
}

static void prepare_patterns(void) {
    double *along = malloc(pixels * sizeof *along);
    double longest = fmax(box(xs), box(ys)), low = INFINITY, high = -INFINITY;
    double toward_x = cos(30 * (M_PI / 180)), toward_y = 0.5;
    uint64_t prop = combine(combine(0, of_name("cue sparkle")), of_name("meadow"));
    for (int i = 0; i < pixels; i++) {
        xs[i] /= longest, ys[i] /= longest;
        along[i] = xs[i] * toward_x + ys[i] * toward_y;
        low = fmin(low, along[i]), high = fmax(high, along[i]);
    }
    double stretch = 1 / (high - low);
    for (int i = 0; i < pixels; i++) {
        float share = fminf(1 - 0x1p-20f, (float)((along[i] - low) * stretch));
        bands[i] = (float)(share - floor(share));
        double turns = fraction(atan2(ys[i], xs[i]) / (2 * M_PI));
        arms[i] = (float)fraction(3 * turns);
        uint32_t key = (uint32_t)(combine(prop, i + 1) >> 32);
        offsets[i] = (draw(key, 1) >> 8) * 0x1p-24f;
        lit_keys[i] = draw(key, 2);
    }
    free(along);
}

/* --- frames --- */

static inline float above_zero(float v) {
    return (v + fabsf(v)) * 0.5f;
}

static inline float fraction_of_sum(float source, float offset) {
    float sum = source + offset;
    return above_zero(sum - (((sum - (0.5f - 0x1p-22f)) + 12582912.f) - 12582912.f));
}

static inline float least(float a, float b) {
    return a < b ? a : b;
}

static void encode(const float *v, int count, unsigned char *rgb) {
    for (int i = 0; i < count; i++) {
        uint32_t bits;
        memcpy(&bits, v + i, 4);
        rgb[3 * i] = (code_table[bits >> 16] + (bits & 0xFFFF)) >> 16;
    }
}

/* One channel of all three layers. Written out for the compiler, which leaves an inner loop over pieces as it is. */
static void mix(int c, int count, float ways[PIECES][TILE], const float *restrict band, const float *restrict spark,
                float *restrict light) {
    const float color = gold[c], first = base[c], most = clipped[c] ? 1 : 1e30f, lowest = clipped[c] ? 0 : -1e30f;
    const float *restrict w0 = ways[0], *restrict w1 = ways[1], *restrict w2 = ways[2];
    const float *restrict w3 = ways[3], *restrict w4 = ways[4], *restrict w5 = ways[5];
    float a[PIECES], b[PIECES], d[PIECES];
    memcpy(a, c1[c], sizeof a), memcpy(b, c2[c], sizeof b), memcpy(d, c3[c], sizeof d);
#define PIECE(p, x) x * (a[p] + x * (b[p] + x * d[p]))
    for (int i = 0; i < count; i++) {
        float v = first + PIECE(0, w0[i]);
        v += PIECE(1, w1[i]);
        v += PIECE(2, w2[i]);
        v += PIECE(3, w3[i]);
        v += PIECE(4, w4[i]);
        v += PIECE(5, w5[i]);
        v = v < lowest ? lowest : v;
        v = least(most, v) * OPACITY;
        v = v + band[i] * color * OPACITY * (1 - v);
        light[i] = v + OPACITY * above_zero(spark[i] - spark[i] * v);
    }
}

static void paint(long frame, unsigned char *rgb) {
    double seconds = frame / (double)RATE, passes = seconds / 2;
    float swept = -(float)fraction(seconds / 3), turned = -(float)fraction(3 * fraction(seconds / 4));
    double whole = floor(passes);
    float sparkled = (float)(passes - whole);
    uint32_t window[2] = {finish((uint32_t)(int64_t)whole + 0x9E3779B9u), finish((uint32_t)(int64_t)whole + 1 + 0x9E3779B9u)};
    const uint32_t density = (uint32_t)ceil(0.3 * 0x1p24);
    const float width = 0.5f, per_edge = 1 / (0.25f * 0.5f), rise = (float)(1 / 0.2), fall = (float)(1 / 0.5);
    float light[3][TILE], ways[PIECES][TILE], band[TILE], spark[TILE];
    for (int tile = 0; tile < pixels; tile += TILE) {
        int count = pixels - tile < TILE ? pixels - tile : TILE;
        for (int i = 0; i < count; i++) {
            float at = fraction_of_sum(bands[tile + i], swept);
            for (int p = 0; p < PIECES; p++) ways[p][i] = least(widths[p], above_zero(at - starts[p]));
        }
        for (int i = 0; i < count; i++) {
            float u = fraction_of_sum(arms[tile + i], turned);
            float up = least(1, above_zero(least(u, width - u) * per_edge));
            band[i] = up * up * (3 - 2 * up);
        }
        for (int i = 0; i < count; i++) {
            float sum = offsets[tile + i] + sparkled;
            float over = ((sum - (0.5f - 0x1p-22f)) + 12582912.f) - 12582912.f, f = above_zero(sum - over);
            uint32_t bits = finish(lit_keys[tile + i] ^ (over > 0 ? window[1] : window[0]));
            float lit = bits >> 8 < density ? 1 : 0;
            spark[i] = least(1, least(f * rise, fall - f * fall)) * lit;
        }
        for (int c = 0; c < 3; c++) mix(c, count, ways, band, spark, light[c]);
        for (int c = 0; c < 3; c++) encode(light[c], count, rgb + 3 * tile + c);
    }
}

static void *work(void *number) {
    size_t bytes = 3 * (size_t)pixels;
    unsigned char *rgb = malloc(bytes);
    for (long frame = (long)(intptr_t)number; frame < frames; frame += threads) {
        paint(frame, rgb);
        for (size_t done = 0; done < bytes;) {
            ssize_t wrote = pwrite(file, rgb + done, bytes - done, frame * bytes + done);
            if (wrote < 0) fail("pwrite");
            done += wrote;
        }
    }
    free(rgb);
    return NULL;
}

static void render(const char *name) {
    xs = malloc(pixels * sizeof *xs), ys = malloc(pixels * sizeof *ys);
    bands = malloc(pixels * sizeof *bands), arms = malloc(pixels * sizeof *arms);
    offsets = malloc(pixels * sizeof *offsets), lit_keys = malloc(pixels * sizeof *lit_keys);
    for (int i = 0; i < pixels; i++) xs[i] = place(i, 1), ys[i] = place(i, 2);
    prepare_palette();
    prepare_codes();
    prepare_patterns();
    if ((file = open(name, O_CREAT | O_TRUNC | O_WRONLY, 0666)) < 0) fail(name);
    pthread_t started[MOST_THREADS];
    for (int i = 1; i < threads; i++) pthread_create(&started[i], NULL, work, (void *)(intptr_t)i);
    work((void *)0);
    for (int i = 1; i < threads; i++) pthread_join(started[i], NULL);
    if (fsync(file) != 0 || close(file) != 0) fail(name);
}

/* --- the same show for the program in Java --- */

static void write_map(void) {
    printf("prop,pixel,x,y\n");
    for (int i = 0; i < pixels; i++) printf("meadow,%d,%.4f,%.4f\n", i + 1, place(i, 1), place(i, 2));
}

static void write_cue(const char *name, const char *effect, const char *settings) {
    printf("    {\"at\": \"0s\", \"for\": \"%ldms\", \"on\": \"*\", \"name\": \"%s\", \"effect\": \"%s\", \"with\": {%s}}", frames * 1000 / RATE,
           name, effect, settings);
}

static void write_show(void) {
    printf("{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"rate\": %d, \"length\": \"%ldms\", \"layers\": [\n", RATE,
           frames * 1000 / RATE);
    printf("  {\"name\": \"below\", \"opacity\": 0.9, \"cues\": [\n");
    char sweep[300];
    int length = sprintf(sweep, "\"palette\": [");
    for (int i = 0; i < COLORS; i++) length += sprintf(sweep + length, "%s\"#%06x\"", i == 0 ? "" : ", ", STOPS[i]);
    sprintf(sweep + length, "], \"width\": 1, \"toward\": 30, \"every\": \"3s\"");
    write_cue("ground", "sweep", sweep);
    printf("]},\n  {\"name\": \"middle\", \"blend\": \"screen\", \"opacity\": 0.9, \"cues\": [\n");
    write_cue("arms", "spin", "\"palette\": \"gold\", \"soft\": 0.25, \"every\": \"4s\"");
    printf("]},\n  {\"name\": \"above\", \"blend\": \"lighten\", \"opacity\": 0.9, \"cues\": [\n");
    write_cue("sparkle", "twinkle", "\"palette\": \"white\", \"every\": \"2s\"");
    printf("]}\n]}\n");
}

static void misused(void) {
    fprintf(stderr, "speed: see the head of speed.c\n");
    exit(2);
}

static long number(const char *word) {
    long value = atol(word);
    if (value < 1) misused();
    return value;
}

int main(int count, char **words) {
    const char *what = count > 2 ? words[1] : "";
    if (strcmp(what, "map") == 0 && count == 3) {
        pixels = number(words[2]);
        write_map();
    } else if (strcmp(what, "show") == 0 && count == 3) {
        frames = number(words[2]);
        write_show();
    } else if (strcmp(what, "render") == 0 && count == 6) {
        pixels = number(words[2]);
        frames = number(words[3]);
        threads = number(words[4]);
        if (threads > MOST_THREADS) misused();
        render(words[5]);
    } else {
        misused();
    }
    return 0;
}
