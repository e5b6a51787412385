package akin.model.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One kind of quantity with texts it must read and a maker of arbitrary values of it.
 *
 * @param good texts it must read, each followed by how it writes the value back
 */
record Subject(
        String name,
        Function<String, ?> parse,
        String pattern,
        String allowed,
        Function<RandomGenerator, ?> made,
        List<String> good) {

    static Stream<Subject> all() {
        return Stream.of(
                new Subject(
                        "frame rate",
                        FrameRate::parse,
                        FrameRate.PATTERN,
                        FrameRate.ALLOWED,
                        Subject::frameRate,
                        List.of(
                                "24000/1001",
                                "24000/1001",
                                "23.976",
                                "24000/1001",
                                "23.98",
                                "24000/1001",
                                "24",
                                "24",
                                "25.00",
                                "25",
                                "29.97",
                                "30000/1001",
                                "47.95",
                                "48000/1001",
                                "59.94",
                                "60000/1001",
                                "119.88",
                                "120000/1001",
                                "24 fps",
                                "24",
                                "23.976\u00A0fps",
                                "24000/1001",
                                "25/2",
                                "25/2",
                                "48/2",
                                "24",
                                "2000",
                                "2000",
                                "1",
                                "1")),
                new Subject(
                        "shutter",
                        Shutter::parse,
                        Shutter.PATTERN,
                        Shutter.ALLOWED,
                        Subject::shutter,
                        List.of(
                                "180°", "180°", "180 deg", "180°", "180.0 °", "180°", "172.8°", "172.8°", "360°",
                                "360°", "1/50", "1/50", "1/50 s", "1/50", "1/50s", "1/50", "20 ms", "1/50", "0.02 s",
                                "1/50", "1/59.94", "1/59.94", "0.4 s", "0.4 s", "3/7", "3/7 s", "500 µs", "1/2000",
                                "500 us", "1/2000", "2 s", "2 s", "1.5 s", "1.5 s", "30 ms", "0.03 s", "2/100",
                                "1/50")),
                new Subject(
                        "aperture",
                        Aperture::parse,
                        Aperture.PATTERN,
                        Aperture.ALLOWED,
                        r -> new Aperture(
                                number(r, 0.5, 128),
                                r.nextBoolean() ? Aperture.Kind.GEOMETRIC : Aperture.Kind.PHOTOMETRIC),
                        List.of(
                                "f/2.8", "f/2.8", "f2.8", "f/2.8", "F/4", "f/4", "f / 8", "f/8", "T2.9", "T2.9",
                                "t/2.9", "T2.9", "T 1.3", "T1.3")),
                new Subject(
                        "ISO value",
                        Iso::parse,
                        Iso.PATTERN,
                        Iso.ALLOWED,
                        r -> new Iso(r.nextInt(1, 10_000_001)),
                        List.of(
                                "800",
                                "800",
                                "ISO 800",
                                "800",
                                "EI 800",
                                "800",
                                "iso800",
                                "800",
                                "10000000",
                                "10000000")),
                new Subject(
                        "neutral filter",
                        NeutralDensity::parse,
                        NeutralDensity.PATTERN,
                        NeutralDensity.ALLOWED,
                        r -> r.nextInt(4) == 0
                                ? NeutralDensity.ofStops(r.nextInt(59) / 3.0)
                                : new NeutralDensity(number(r, 1e-3, 6)),
                        List.of(
                                "ND 0.6",
                                "ND 0.6",
                                "ND0.6",
                                "ND 0.6",
                                "nd 0.60",
                                "ND 0.6",
                                "ND 3.0",
                                "ND 3.0",
                                "ND4",
                                "2 stops",
                                "ND 1000",
                                "ND 3.0",
                                "ND 64",
                                "6 stops",
                                "2 stops",
                                "2 stops",
                                "1 stop",
                                "1 stop",
                                "1/3 stop",
                                "1/3 stop",
                                "1 2/3 stops",
                                "1 2/3 stops",
                                "clear",
                                "clear",
                                "ND 0.0",
                                "clear")),
                new Subject(
                        "colour temperature",
                        ColourTemperature::parse,
                        ColourTemperature.PATTERN,
                        ColourTemperature.ALLOWED,
                        r -> new ColourTemperature(r.nextInt(1000, 40_001)),
                        List.of("4300 K", "4300 K", "4300K", "4300 K", "4300\u00A0K", "4300 K", "40000 K", "40000 K")),
                new Subject(
                        "tint",
                        Tint::parse,
                        Tint.PATTERN,
                        Tint.ALLOWED,
                        r -> new Tint(signed(r, 100)),
                        List.of("+4", "+4", "-2", "-2", "0", "0", "4", "+4", "-0", "0", "0.5", "+0.5")),
                new Subject(
                        "length",
                        Length::parse,
                        Length.PATTERN,
                        Length.ALLOWED,
                        r -> new Length(number(r, 1e-3, 1e9)),
                        List.of(
                                "50 mm",
                                "50 mm",
                                "2.4 m",
                                "2.4 m",
                                "12 cm",
                                "120 mm",
                                "1.5 in",
                                "38.1 mm",
                                "8 ft",
                                "2.4384 m",
                                "8 ft 2 in",
                                "2.4892 m",
                                "1 km",
                                "1000 m",
                                "999.9mm",
                                "999.9 mm",
                                "5.1 km",
                                "5100 m")),
                new Subject(
                        "sensor area",
                        Area::parse,
                        Area.PATTERN,
                        Area.ALLOWED,
                        r -> new Area(number(r, 1e-3, 1000), number(r, 1e-3, 1000)),
                        List.of(
                                "36.0 x 24.0 mm",
                                "36 x 24 mm",
                                "36x24 mm",
                                "36 x 24 mm",
                                "36 × 24 mm",
                                "36 x 24 mm",
                                "36 mm x 24 mm",
                                "36 x 24 mm")),
                new Subject(
                        "picture size",
                        PictureSize::parse,
                        PictureSize.PATTERN,
                        PictureSize.ALLOWED,
                        r -> new PictureSize(r.nextInt(16, 65_537), r.nextInt(16, 65_537)),
                        List.of("3840x2160", "3840x2160", "3840 x 2160", "3840x2160", "3840×2160", "3840x2160")),
                new Subject(
                        "picture shape",
                        Aspect::parse,
                        Aspect.PATTERN,
                        Aspect.ALLOWED,
                        r -> r.nextBoolean()
                                ? new Aspect(r.nextInt(10, 100) / (double) r.nextInt(10, 100))
                                : new Aspect(number(r, 0.1, 10)),
                        List.of(
                                "16:9", "16:9", "1.78:1", "1.78:1", "2.39:1", "2.39:1", "2.39", "2.39:1", "4 : 3",
                                "4:3", "9:16", "9:16", "3:2", "1.5:1")),
                simple(
                        "turning speed",
                        AngularSpeed::parse,
                        AngularSpeed.PATTERN,
                        AngularSpeed.ALLOWED,
                        AngularSpeed::new,
                        3600,
                        List.of("40 °/s", "40 °/s", "40 deg/s", "40 °/s", "0 °/s", "0 °/s")),
                simple(
                        "frequency",
                        Frequency::parse,
                        Frequency.PATTERN,
                        Frequency.ALLOWED,
                        Frequency::new,
                        1e9,
                        List.of("50 Hz", "50 Hz", "2 kHz", "2 kHz", "1.2 MHz", "1.2 MHz", "1500 Hz", "1.5 kHz")),
                simple(
                        "time",
                        Timespan::parse,
                        Timespan.PATTERN,
                        Timespan.ALLOWED,
                        Timespan::new,
                        3.6e10,
                        List.of(
                                "16.2 ms",
                                "16.2 ms",
                                "1.5 s",
                                "1.5 s",
                                "250 us",
                                "250 µs",
                                "250 µs",
                                "250 µs",
                                "250 \u03BCs",
                                "250 µs",
                                "40 min",
                                "40 min",
                                "2 h",
                                "2 h",
                                "90 s",
                                "90 s",
                                "120 s",
                                "2 min",
                                "1.5 h",
                                "90 min",
                                "0 s",
                                "0 ms",
                                "1000 ms",
                                "1 s")),
                signed(
                        "percentage",
                        Percent::parse,
                        Percent.PATTERN,
                        Percent.ALLOWED,
                        Percent::new,
                        1000,
                        List.of("5 %", "5 %", "5%", "5 %", "-2.5 %", "-2.5 %")),
                signed(
                        "difference in stops",
                        Stops::parse,
                        Stops.PATTERN,
                        Stops.ALLOWED,
                        Stops::new,
                        100,
                        List.of(
                                "1/3 stop",
                                "1/3 stop",
                                "1/6 stops",
                                "1/6 stop",
                                "-0.5 stop",
                                "-0.5 stop",
                                "+1 1/3 stops",
                                "1 1/3 stops",
                                "-2/3 stop",
                                "-2/3 stop",
                                "2 stops",
                                "2 stops",
                                "3/6 stop",
                                "0.5 stop")),
                signed(
                        "mired value",
                        Mired::parse,
                        Mired.PATTERN,
                        Mired.ALLOWED,
                        Mired::new,
                        1000,
                        List.of("5 mired", "5 mired", "-134 mireds", "-134 mired")),
                simple(
                        "mass",
                        Mass::parse,
                        Mass.PATTERN,
                        Mass.ALLOWED,
                        Mass::new,
                        1e7,
                        List.of("1.2 kg", "1.2 kg", "800 g", "800 g", "2 lb", "907.18474 g", "16 oz", "453.59237 g")),
                simple(
                        "power",
                        Power::parse,
                        Power.PATTERN,
                        Power.ALLOWED,
                        Power::new,
                        1e6,
                        List.of("14 W", "14 W", "1.2 kW", "1.2 kW")),
                simple(
                        "energy",
                        Energy::parse,
                        Energy.PATTERN,
                        Energy.ALLOWED,
                        Energy::new,
                        1e6,
                        List.of("98 Wh", "98 Wh", "1.2 kWh", "1.2 kWh")),
                simple(
                        "data rate",
                        DataRate::parse,
                        DataRate.PATTERN,
                        DataRate.ALLOWED,
                        DataRate::new,
                        1e13,
                        List.of(
                                "400 MB/s",
                                "3.2 Gbit/s",
                                "1.2 Gbit/s",
                                "1.2 Gbit/s",
                                "400 Mbit/s",
                                "400 Mbit/s",
                                "9600 bit/s",
                                "9.6 kbit/s")),
                simple(
                        "data size",
                        DataSize::parse,
                        DataSize.PATTERN,
                        DataSize.ALLOWED,
                        DataSize::new,
                        1e18,
                        List.of(
                                "512 GB",
                                "512 GB",
                                "1 TB",
                                "1 TB",
                                "480 GiB",
                                "480 GiB",
                                "2 TiB",
                                "2 TiB",
                                "1.92 TB",
                                "1.92 TB",
                                "4 KiB",
                                "4.096 kB",
                                "0 B",
                                "0 B")),
                simple(
                        "voltage",
                        Voltage::parse,
                        Voltage.PATTERN,
                        Voltage.ALLOWED,
                        Voltage::new,
                        1000,
                        List.of("14.4 V", "14.4 V")),
                signed(
                        "temperature",
                        Temperature::parse,
                        Temperature.PATTERN,
                        Temperature.ALLOWED,
                        Temperature::new,
                        90,
                        List.of("35 °C", "35 °C", "-10 °C", "-10 °C")),
                new Subject(
                        "signal level",
                        Level::parse,
                        Level.PATTERN,
                        Level.ALLOWED,
                        Subject::level,
                        List.of(
                                "41 %",
                                "41 %",
                                "41 IRE",
                                "41 %",
                                "41 % full",
                                "41 % full",
                                "-4%",
                                "-4 %",
                                "109 %",
                                "109 %",
                                "code 420 of 1023",
                                "code 420 of 1023",
                                "code 1023 of 1023",
                                "100 % full")));
    }

    private static Subject simple(
            String name,
            Function<String, ?> parse,
            String pattern,
            String allowed,
            DoubleFunction<?> maker,
            double most,
            List<String> good) {
        return new Subject(name, parse, pattern, allowed, r -> maker.apply(number(r, most * 1e-12, most)), good);
    }

    private static Subject signed(
            String name,
            Function<String, ?> parse,
            String pattern,
            String allowed,
            DoubleFunction<?> maker,
            double most,
            List<String> good) {
        return new Subject(name, parse, pattern, allowed, r -> maker.apply(signed(r, most)), good);
    }

    private static FrameRate frameRate(RandomGenerator r) {
        return switch (r.nextInt(3)) {
            case 0 -> FrameRate.of(r.nextInt(1, 2001), 1);
            case 1 -> FrameRate.of(1000L * r.nextInt(2, 2001), 1001);
            default -> {
                long denominator = r.nextInt(1, 450_000);
                yield FrameRate.of(r.nextLong(denominator, 2000 * denominator + 1), denominator);
            }
        };
    }

    private static Shutter shutter(RandomGenerator r) {
        return switch (r.nextInt(5)) {
            case 0 -> new Shutter.Angle(BigDecimal.valueOf(r.nextInt(1, 3601), 1));
            case 1 -> new Shutter.Angle(new BigDecimal(number(r, 1e-6, 360)));
            case 2 -> new Shutter.Time(BigFraction.of(1, r.nextInt(1, 20_000)));
            case 3 -> new Shutter.Time(BigFraction.of(100, r.nextInt(10, 1_000_000)));
            default -> new Shutter.Time(BigFraction.of(r.nextInt(1, 1000), r.nextInt(100, 1000)));
        };
    }

    private static Level level(RandomGenerator r) {
        return switch (r.nextInt(3)) {
            case 0 -> new Level(r.nextInt(1024) / 1023.0, Level.Range.FULL);
            case 1 -> new Level(number(r, 1e-6, 1), Level.Range.FULL);
            default -> Level.clipped(signed(r, 1.2), Level.Range.LEGAL);
        };
    }

    private static double signed(RandomGenerator r, double most) {
        double size = r.nextInt(12) == 0 ? r.nextInt(7) / 6.0 : number(r, most * 1e-9, most);
        return r.nextBoolean() ? size : -size;
    }

    /** Numbers of every size in range: some round, some with all their digits, now and then an end of the range. */
    static double number(RandomGenerator r, double least, double most) {
        if (r.nextInt(50) == 0) {
            return r.nextBoolean() ? least : most;
        }
        double any = Math.exp(r.nextDouble(Math.log(least), Math.log(most)));
        double rounded = r.nextBoolean()
                ? any
                : new BigDecimal(any)
                        .round(new MathContext(r.nextInt(1, 5), RoundingMode.DOWN))
                        .doubleValue();
        return Math.max(least, Math.min(most, rounded));
    }

    @Override
    public String toString() {
        return name;
    }
}
