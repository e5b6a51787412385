package akin.model.exposure;

/** Stops: how much more or less light one setting turns into signal than another. */
public final class Light {
    /** Density of a filter that halves the light, log₁₀ 2. */
    private static final double DENSITY_PER_STOP = Math.log10(2);

    private static final double LIGHT_VALUE_ISO = 100;

    private Light() {}

    /**
     * A ratio of light as stops.
     *
     * <p>log₂ ratio, the definition of the stop. Check value: 8 → 3.
     *
     * @param ratio ratio of two amounts of light, above 0
     * @return stops; negative for ratios below 1
     * @throws IllegalArgumentException if the ratio is 0 or below, infinite or not a number
     */
    public static double stops(double ratio) {
        return Math.log(Require.positive("ratio", ratio, "")) / Math.log(2);
    }

    /**
     * Stops as a ratio of light.
     *
     * <p>2^stops, the inverse of {@link #stops}. Check value: −1 → 0.5.
     *
     * @param stops stops, any finite number
     * @return ratio, above 0
     * @throws IllegalArgumentException if the stops are infinite or not a number
     */
    public static double ratio(double stops) {
        return Math.pow(2, finite("stops", stops));
    }

    /**
     * How much brighter B records the same scene than A.
     *
     * <p>log₂((t_B S_B / (T_B² 2^ND_B)) / (t_A S_A / (T_A² 2^ND_A))): positive where B is brighter. Swapping A and B
     * turns the sign. Source: the exposure equation N²/t = L S/K (basiccamera.blogspot.com, yedlin.net), with T for N
     * and filters. Check value: 1/50 s, ISO 800, T2.8, ND 0 against 1/50 s, ISO 800, T5.6, ND 0 → −2.
     *
     * @param secondsA exposure time of A in seconds, above 0
     * @param isoA sensitivity of A, above 0
     * @param tNumberA photometric stop of A, above 0
     * @param ndStopsA neutral density on A in stops, 0 or above
     * @param secondsB exposure time of B in seconds, above 0
     * @param isoB sensitivity of B, above 0
     * @param tNumberB photometric stop of B, above 0
     * @param ndStopsB neutral density on B in stops, 0 or above
     * @return stops
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double stopsApart(
            double secondsA,
            double isoA,
            double tNumberA,
            double ndStopsA,
            double secondsB,
            double isoB,
            double tNumberB,
            double ndStopsB) {
        return collected(secondsB, isoB, tNumberB, ndStopsB) - collected(secondsA, isoA, tNumberA, ndStopsA);
    }

    /**
     * Photometric stop from the geometric one.
     *
     * <p>T = N / √transmittance. Source: idigitalphoto.com, "T-number". Check value:
     * f/2, 75 % → T2.309.
     *
     * @param fNumber geometric stop, above 0
     * @param transmittance share of the light that the lens passes, above 0 and up to 1
     * @return photometric stop
     * @throws IllegalArgumentException if an argument is out of its range or not a number
     */
    public static double tNumber(double fNumber, double transmittance) {
        return Require.positive("geometric stop", fNumber, "") / Math.sqrt(passing(transmittance));
    }

    /**
     * Light value: the exposure value that a setting stands for, referred to ISO 100.
     *
     * <p>log₂(N² · 100 / (t · ISO)). Source: ExifTool, composite tag LightValue. Check value: f/2.8, 1/50 s, ISO 100 →
     * 8.614710.
     *
     * @param fNumber stop, above 0
     * @param seconds exposure time in seconds, above 0
     * @param iso sensitivity, above 0
     * @return light value in stops
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double lightValue(double fNumber, double seconds, double iso) {
        Require.positive("stop", fNumber, "");
        Require.positive("exposure time", seconds, "s");
        Require.positive("ISO", iso, "");
        return stops(fNumber * fNumber * LIGHT_VALUE_ISO / (seconds * iso));
    }

    /**
     * Stops that a neutral filter of a density takes.
     *
     * <p>density / log₁₀ 2. Source: definition of optical density; camera-wiki.org, "Neutral density filter". Check
     * value: 0.3 → 0.996578.
     *
     * @param density optical density, 0 or above
     * @return stops
     * @throws IllegalArgumentException if the density is negative, infinite or not a number
     */
    public static double stopsOfDensity(double density) {
        return Require.notNegative("density", density, "") / DENSITY_PER_STOP;
    }

    /**
     * Density of a neutral filter that takes so many stops.
     *
     * <p>stops · log₁₀ 2, the inverse of {@link #stopsOfDensity}. Check value: 1 → 0.30103.
     *
     * @param stops stops, 0 or above
     * @return optical density
     * @throws IllegalArgumentException if the stops are negative, infinite or not a number
     */
    public static double densityOfStops(double stops) {
        return Require.notNegative("stops", stops, "") * DENSITY_PER_STOP;
    }

    /**
     * Stops that a filter of a transmittance takes.
     *
     * <p>−log₂ transmittance. Check value: 0.251189 (ND 0.6) → 1.993157.
     *
     * @param transmittance share of the light that passes, above 0 and up to 1
     * @return stops, 0 or above
     * @throws IllegalArgumentException if the transmittance is out of its range or not a number
     */
    public static double stopsOfTransmittance(double transmittance) {
        return stops(1 / passing(transmittance));
    }

    /**
     * Sensitivity that makes up for stops of light lost or gained.
     *
     * <p>iso · 2^stops. Arithmetic. Check value: ISO 800 and −1.17 stops → ISO 355.5.
     *
     * @param iso sensitivity now, above 0
     * @param stops how much brighter the recording should be, in stops; negative for darker
     * @return sensitivity
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double isoBrighterBy(double iso, double stops) {
        return Require.positive("ISO", iso, "") * ratio(stops);
    }

    private static double collected(double seconds, double iso, double tNumber, double ndStops) {
        return stops(Require.positive("exposure time", seconds, "s"))
                + stops(Require.positive("ISO", iso, ""))
                - 2 * stops(Require.positive("photometric stop", tNumber, ""))
                - Require.notNegative("neutral density", ndStops, "stops");
    }

    private static double passing(double transmittance) {
        if (!(transmittance > 0 && transmittance <= 1)) {
            throw new IllegalArgumentException("transmittance must be above 0 and up to 1, was " + transmittance);
        }
        return transmittance;
    }

    private static double finite(String name, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite, was " + value);
        }
        return value;
    }
}
