package housewright.testing;

import housewright.model.Remarks;
import housewright.unit.Quantity;
import housewright.unit.VideoFormat;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Fills any record of the model by its components, each now and then, so that a new component is tried as soon as it is
 * there. What must fit something else is left to who knows what that is.
 */
abstract class RandomRecords {
    /** Says that a component is filled at random. */
    static final Object ANY = new Object();

    /** Reflection makes them anew each time. */
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            return type.getRecordComponents();
        }
    };

    final Random random;
    final RandomValues values;

    RandomRecords(Random random) {
        this.random = random;
        this.values = new RandomValues(random);
    }

    /** The value of a component that must fit others, or {@link #ANY}. {@code place} is {@code Cable.type} and so on. */
    abstract @Nullable Object fitting(String place);

    /** @param given components by name that are settled */
    final <R extends Record> R record(Class<R> type, Map<String, ?> given) {
        RecordComponent[] components = COMPONENTS.get(type);
        @Nullable Object[] arguments = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            arguments[i] = given.containsKey(components[i].getName())
                    ? given.get(components[i].getName())
                    : component(type, components[i]);
        }
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(arguments);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " of " + List.of(arguments), e);
        }
    }

    private @Nullable Object component(Class<?> owner, RecordComponent component) {
        if (component.getType() == Remarks.class) {
            return random.nextInt(4) == 0 ? record(Remarks.class, Map.of()) : Remarks.NONE;
        }
        if (component.getAnnotatedType().isAnnotationPresent(Nullable.class) && random.nextInt(5) < 3) {
            return null;
        }
        Object fitting = fitting(owner.getSimpleName() + "." + component.getName());
        return fitting == ANY ? value(component.getGenericType()) : fitting;
    }

    private Object value(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            List<Object> list = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                list.add(value(generic.getActualTypeArguments()[0]));
            }
            return list;
        }
        if (type instanceof ParameterizedType generic && generic.getActualTypeArguments()[0] == String.class) {
            Map<String, Object> map = new LinkedHashMap<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                map.put(name(), value(generic.getActualTypeArguments()[1]));
            }
            return map;
        }
        if (type instanceof Class<?> single) {
            return single(single);
        }
        throw new IllegalStateException("No random " + type);
    }

    private Object single(Class<?> type) {
        if (type == String.class) {
            return values.text();
        }
        if (type == boolean.class || type == Boolean.class) {
            return random.nextBoolean();
        }
        if (type == int.class || type == Integer.class) {
            return random.nextInt(500);
        }
        if (type == double.class || type == Double.class) {
            return values.decimal();
        }
        if (Quantity.class.isAssignableFrom(type)) {
            return values.quantity(type.asSubclass(Quantity.class));
        }
        if (type.isEnum()) {
            return values.pick(List.of(type.getEnumConstants()));
        }
        if (type == BigDecimal.class) {
            return values.money();
        }
        if (type == VideoFormat.class) {
            return values.format();
        }
        if (type == LocalDate.class) {
            return values.date();
        }
        if (type == LocalTime.class) {
            return values.time();
        }
        if (type == LocalDateTime.class) {
            return values.moment();
        }
        if (type == ZoneId.class) {
            return values.zone();
        }
        if (type.isRecord()) {
            return record(type.asSubclass(Record.class), Map.of());
        }
        throw new IllegalStateException("No random " + type);
    }

    /** An id, among them such as YAML takes for something else. */
    final String name() {
        return random.nextInt(4) == 0
                ? values.pick(List.of("on", "no", "y", "12", "0x1", "1e3", "007", "null", "true", "X", "9-9"))
                : values.pick(List.of("a", "desk", "box", "front", "Left", "x1", "lamp")) + "-" + random.nextInt(1000);
    }
}
