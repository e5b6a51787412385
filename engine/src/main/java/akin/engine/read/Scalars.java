package akin.engine.read;

import akin.model.gear.Aid;
import akin.model.gear.Codec;
import akin.model.gear.Connector;
import akin.model.gear.FileLimit;
import akin.model.gear.IsoMenu;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Rates;
import akin.model.gear.Sampling;
import akin.model.gear.ShutterMenu;
import akin.model.gear.SignalRange;
import akin.model.gear.Stabilisation;
import akin.model.gear.TimeLimit;
import akin.model.gear.TimecodeSource;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Aperture;
import akin.model.quantity.Area;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.CropFactor;
import akin.model.quantity.DataRate;
import akin.model.quantity.DataSize;
import akin.model.quantity.Energy;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.Mass;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Percent;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Power;
import akin.model.quantity.Shutter;
import akin.model.quantity.Stops;
import akin.model.quantity.Timespan;
import akin.model.quantity.Tint;
import akin.model.quantity.Voltage;
import akin.model.rig.Knob;
import akin.model.rig.LightKind;
import akin.model.rig.LutHolder;
import akin.model.rig.Match;
import akin.model.rig.Standing;
import akin.model.rig.SyncPlan;
import akin.model.tone.CodeScale;
import akin.model.tone.Encoding;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.BeanProperty;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.module.SimpleModule;

/** How each leaf type of a sheet reads the text of its scalar. */
final class Scalars {

    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?|0o[0-7]+|0x[0-9a-fA-F]+"
                    + "|[-+]?\\.(inf|Inf|INF)|\\.(nan|NaN|NAN)");
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,12}(\\.[0-9]{1,25})?");
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,9}");
    private static final Pattern NULL = Pattern.compile("~|null|Null|NULL|");
    private static final Pattern BOOLEAN = Pattern.compile("true|True|TRUE|false|False|FALSE");
    private static final Pattern KELVINS = Pattern.compile("[1-9][0-9]{0,3} ?K");
    private static final String AUTO = "auto";

    private Scalars() {}

    /** A value whose text does not fit its type; the message is for the person who wrote it. */
    static final class Unfit extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unfit(String message) {
            super(message, null, false, false);
        }
    }

    static boolean isNull(String plain) {
        return NULL.matcher(plain).matches();
    }

    static SimpleModule module() {
        SimpleModule module = new SimpleModule("akin") {
            private static final long serialVersionUID = 1L;

            @Override
            public void setupModule(SetupContext context) {
                super.setupModule(context);
                context.addValueInstantiators(new RecordInstantiator.ForRecords());
            }
        };
        leaf(module, String.class, Scalars::text);
        leaf(module, Node.Scalar.class, scalar -> scalar);
        leaf(module, Boolean.class, Scalars::truth);
        leaf(module, Integer.class, Scalars::whole);
        leaf(module, Double.class, Scalars::decimal);
        leaf(module, Double.TYPE, Scalars::decimal);
        leaf(module, LocalDate.class, Scalars::day);
        quantity(module, AngularSpeed.class, AngularSpeed::parse);
        quantity(module, Aperture.class, Aperture::parse);
        quantity(module, Area.class, Area::parse);
        quantity(module, ColourTemperature.class, ColourTemperature::parse);
        quantity(module, CropFactor.class, CropFactor::parse);
        quantity(module, DataRate.class, DataRate::parse);
        quantity(module, DataSize.class, DataSize::parse);
        quantity(module, FileLimit.class, FileLimit::parse);
        quantity(module, FrameRate.class, FrameRate::parse);
        quantity(module, Frequency.class, Frequency::parse);
        quantity(module, Energy.class, Energy::parse);
        quantity(module, Mass.class, Mass::parse);
        quantity(module, Power.class, Power::parse);
        quantity(module, Voltage.class, Voltage::parse);
        quantity(module, Iso.class, Iso::parse);
        quantity(module, ReadingsSheet.LevelRead.class, ReadingsSheet.LevelRead::parse);
        quantity(module, Length.class, Length::parse);
        quantity(module, NeutralDensity.class, NeutralDensity::parse);
        quantity(module, Percent.class, Percent::parse);
        quantity(module, PictureSize.class, PictureSize::parse);
        quantity(module, Shutter.class, Shutter::parse);
        quantity(module, Shutter.Angle.class, text -> kind(text, Shutter.Angle.class, "an angle, such as 180°"));
        quantity(module, Shutter.Time.class, text -> kind(text, Shutter.Time.class, "a time, such as 1/50"));
        quantity(module, Stops.class, Stops::parse);
        quantity(module, TimeLimit.class, TimeLimit::parse);
        quantity(module, Timespan.class, Timespan::parse);
        quantity(module, Tint.class, Tint::parse);
        words(module, Aid.class, Aid.values());
        lowerCase(module, CodeScale.class, CodeScale.values());
        lowerCase(module, Encoding.Kind.class, Encoding.Kind.values());
        words(module, Codec.Kind.class, Codec.Kind.values());
        words(module, Connector.class, Connector.values());
        words(module, Lens.Iris.class, Lens.Iris.values());
        words(module, LightKind.class, LightKind.values());
        words(module, LutHolder.class, LutHolder.values());
        words(module, Match.ViewAxis.class, Match.ViewAxis.values());
        words(module, Sampling.class, Sampling.values());
        words(module, SignalRange.class, SignalRange.values());
        words(module, Media.SpeedClass.class, Media.SpeedClass.values());
        words(module, Stabilisation.class, Stabilisation.values());
        words(module, SyncPlan.Counting.class, SyncPlan.Counting.values());
        words(module, TimecodeSource.class, TimecodeSource.values());
        words(module, Knob.class, Knob.values());
        words(module, Standing.class, Standing.values());
        module.addDeserializer(Choice.class, new ChoiceReader(null));
        listOr(
                module,
                Rates.class,
                FrameRate.class,
                RatesSheet.class,
                list -> new Rates(list, null, null),
                s -> new Rates(s.list == null ? List.of() : s.list, s.from, s.to));
        listOr(
                module,
                IsoMenu.class,
                Iso.class,
                IsoSheet.class,
                list -> new IsoMenu(list, null, null, null),
                s -> new IsoMenu(List.of(), s.from, s.to, s.step));
        listOr(
                module,
                WhiteMenu.class,
                ColourTemperature.class,
                WhiteSheet.class,
                list -> new WhiteMenu(list, null, null, null),
                s -> new WhiteMenu(List.of(), s.from, s.to, s.step == null ? null : kelvins(s.step)));
        listOr(
                module,
                Angles.class,
                Shutter.Angle.class,
                DialSheet.class,
                list -> new Angles(list, null),
                dial -> new Angles(List.of(), dial(dial)));
        module.addDeserializer(ReadingsSheet.LevelsSheet.class, new ValueDeserializer<>() {
            @Override
            public ReadingsSheet.LevelsSheet deserialize(JsonParser p, DeserializationContext context) {
                if (p.currentToken() == JsonToken.START_ARRAY) {
                    JavaType list =
                            context.getTypeFactory().constructCollectionType(List.class, ReadingsSheet.LevelRead.class);
                    return new ReadingsSheet.LevelsSheet(context.readValue(p, list));
                }
                return new ReadingsSheet.LevelsSheet(List.of(context.readValue(p, ReadingsSheet.LevelRead.class)));
            }
        });
        module.addDeserializer(ShutterMenu.class, new ValueDeserializer<>() {
            @Override
            public ShutterMenu deserialize(JsonParser p, DeserializationContext context) {
                ShutterSheet sheet = context.readValue(p, ShutterSheet.class);
                Angles angles = sheet.angles == null ? new Angles(List.of(), null) : sheet.angles;
                return new ShutterMenu(
                        angles.list, angles.dial, sheet.times == null ? List.of() : sheet.times, sheet.option);
            }
        });
        return module;
    }

    /** The mapping form of {@link Rates}: rates listed, and the ends of a span of whole rates. */
    record RatesSheet(
            @Nullable List<FrameRate> list,
            @Nullable FrameRate from,
            @Nullable FrameRate to) {}

    /** The mapping form of {@link IsoMenu}. */
    record IsoSheet(
            @Nullable Iso from, @Nullable Iso to, @Nullable Integer step) {}

    /** The mapping form of {@link WhiteMenu}. */
    record WhiteSheet(
            @Nullable ColourTemperature from,
            @Nullable ColourTemperature to,
            @Nullable String step) {}

    /** The mapping form of {@link ShutterMenu}. */
    record ShutterSheet(
            @Nullable Angles angles,
            @Nullable List<Shutter.Time> times,
            @Nullable String option) {}

    /** The mapping form of {@link ShutterMenu.AngleDial}. */
    record DialSheet(Shutter.@Nullable Angle from, Shutter.@Nullable Angle to, Shutter.@Nullable Angle step) {}

    private static ShutterMenu.AngleDial dial(DialSheet sheet) {
        if (sheet.from == null || sheet.to == null || sheet.step == null) {
            throw new Unfit("a dial of angles has from, to and step");
        }
        return new ShutterMenu.AngleDial(sheet.from, sheet.to, sheet.step);
    }

    /** Angles, listed or dialled. */
    record Angles(List<Shutter.Angle> list, ShutterMenu.@Nullable AngleDial dial) {}

    private static <T> void quantity(SimpleModule module, Class<T> type, Function<String, ? extends T> parse) {
        leaf(module, type, scalar -> parse.apply(scalar.text()));
    }

    private static <T> void leaf(SimpleModule module, Class<T> type, Function<Node.Scalar, ? extends T> read) {
        module.addDeserializer(type, new ValueDeserializer<T>() {
            @Override
            public T deserialize(JsonParser p, DeserializationContext context) {
                return read.apply(scalar(p));
            }
        });
    }

    private static <T extends Enum<T>> void words(SimpleModule module, Class<T> type, T[] values) {
        words(module, type, values, T::toString);
    }

    private static <T extends Enum<T>> void lowerCase(SimpleModule module, Class<T> type, T[] values) {
        words(module, type, values, value -> value.name().toLowerCase(Locale.ROOT));
    }

    private static <T extends Enum<T>> void words(
            SimpleModule module, Class<T> type, T[] values, Function<T, String> word) {
        leaf(module, type, scalar -> {
            for (T value : values) {
                if (word.apply(value).equals(scalar.text())) {
                    return value;
                }
            }
            List<String> words = Arrays.stream(values).map(word).toList();
            throw new Unfit("read " + Say.quote(scalar.text()) + "; allowed: " + String.join(", ", words) + "."
                    + Say.nearest(scalar.text(), words));
        });
    }

    private static <R, T, S> void listOr(
            SimpleModule module,
            Class<R> type,
            Class<T> item,
            Class<S> sheet,
            Function<List<T>, R> ofList,
            Function<S, R> ofSheet) {
        module.addDeserializer(type, new ValueDeserializer<R>() {
            @Override
            public R deserialize(JsonParser p, DeserializationContext context) {
                if (p.currentToken() == JsonToken.START_ARRAY) {
                    JavaType list = context.getTypeFactory().constructCollectionType(List.class, item);
                    return ofList.apply(context.readValue(p, list));
                }
                if (p.currentToken() != JsonToken.START_OBJECT) {
                    throw new Unfit("a list, or a mapping with from and to, belongs here");
                }
                return ofSheet.apply(context.readValue(p, sheet));
            }
        });
    }

    private static Node.Scalar scalar(JsonParser p) {
        if (p.currentToken() == JsonToken.VALUE_EMBEDDED_OBJECT && p.getEmbeddedObject() instanceof Node.Scalar s) {
            return s;
        }
        throw new Unfit(
                p.currentToken() == JsonToken.START_ARRAY
                        ? "a single value belongs here, not a list"
                        : "a single value belongs here, not a mapping; with its source it is written {value: ...,"
                                + " source: ...}");
    }

    private static String text(Node.Scalar scalar) {
        boolean other = NUMBER.matcher(scalar.text()).matches()
                || BOOLEAN.matcher(scalar.text()).matches();
        if (scalar.plain() && other) {
            throw new Unfit("read " + Say.quote(scalar.text()) + "; a word belongs here. If this is its name, put it in"
                    + " quotes");
        }
        return scalar.text();
    }

    private static Boolean truth(Node.Scalar scalar) {
        if (scalar.plain() && (scalar.text().equals("true") || scalar.text().equals("false"))) {
            return Boolean.valueOf(scalar.text());
        }
        throw new Unfit(asRead(scalar) + "; allowed: true, false");
    }

    private static Integer whole(Node.Scalar scalar) {
        if (scalar.plain() && WHOLE.matcher(scalar.text()).matches()) {
            return Integer.valueOf(scalar.text());
        }
        throw new Unfit(asRead(scalar) + "; a whole number belongs here, such as 10");
    }

    private static Double decimal(Node.Scalar scalar) {
        if (scalar.plain() && DECIMAL.matcher(scalar.text()).matches()) {
            return new BigDecimal(scalar.text()).doubleValue();
        }
        throw new Unfit(asRead(scalar) + "; a decimal number belongs here, such as 0.71");
    }

    private static String asRead(Node.Scalar scalar) {
        return "read " + Say.quote(scalar.text()) + (scalar.plain() ? "" : ", in quotes that do not belong there");
    }

    private static LocalDate day(Node.Scalar scalar) {
        try {
            return LocalDate.parse(scalar.text());
        } catch (DateTimeParseException e) {
            throw new Unfit("read " + Say.quote(scalar.text()) + "; a day belongs here, such as 2027-03-01");
        }
    }

    private static Integer kelvins(String text) {
        if (!KELVINS.matcher(text).matches()) {
            throw new Unfit("read " + Say.quote(text) + "; a step in kelvin belongs here, such as 100 K");
        }
        return Integer.valueOf(text.substring(0, text.indexOf('K')).strip());
    }

    private static <T extends Shutter> T kind(String text, Class<T> kind, String wanted) {
        Shutter shutter = Shutter.parse(text);
        if (!kind.isInstance(shutter)) {
            throw new Unfit("read " + Say.quote(text) + "; this list holds " + wanted + " each");
        }
        return kind.cast(shutter);
    }

    /** Reads {@code auto}, or whatever the choice is of. */
    private static final class ChoiceReader extends ValueDeserializer<Choice<?>> {
        private final @Nullable ValueDeserializer<?> content;

        private ChoiceReader(@Nullable ValueDeserializer<?> content) {
            this.content = content;
        }

        @Override
        public ValueDeserializer<?> createContextual(DeserializationContext context, BeanProperty property) {
            JavaType type = property.getType().containedType(0);
            return new ChoiceReader(context.findContextualValueDeserializer(type, property));
        }

        @Override
        public Choice<?> deserialize(JsonParser p, DeserializationContext context) {
            if (scalar(p).text().equals(AUTO)) {
                return new Choice<>(null);
            }
            if (scalar(p).text().equalsIgnoreCase(AUTO)) {
                throw new Unfit("read " + Say.quote(scalar(p).text()) + "." + Say.nearest(AUTO, List.of(AUTO)));
            }
            ValueDeserializer<?> reader = java.util.Objects.requireNonNull(content);
            return new Choice<>(reader.deserialize(p, context));
        }
    }
}
