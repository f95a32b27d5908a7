package housewright.file;

import housewright.model.Project;
import housewright.model.Shorthand;
import housewright.model.Written;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** One project with parts of another put into it, and parts taken away. */
final class RandomEdits {
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            return type.getRecordComponents();
        }
    };

    private final Random random;
    private final int rate;

    private RandomEdits(Random random) {
        this.random = random;
        this.rate = 2 + random.nextInt(12);
    }

    static Project mix(Project into, Project from, Random random) {
        return (Project) new RandomEdits(random).record(into, from);
    }

    private boolean now() {
        return random.nextInt(rate) == 0;
    }

    private Record record(Record into, Record from) {
        RecordComponent[] components = COMPONENTS.get(into.getClass());
        @Nullable Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                Object own = components[i].getAccessor().invoke(into);
                Object other = components[i].getAccessor().invoke(from);
                boolean settled = components[i].getName().equals("id")
                        || components[i].getName().equals("format");
                values[i] = settled ? own : value(own, other);
            }
            return into.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(into.getClass().getName(), e);
        }
    }

    private @Nullable Object value(@Nullable Object own, @Nullable Object other) {
        if (own instanceof Map<?, ?> map && other instanceof Map<?, ?> others) {
            return map(map, others);
        }
        if (own instanceof List<?> list && other instanceof List<?> others) {
            return list(list, others);
        }
        boolean whole = own instanceof Shorthand || own instanceof Written;
        if (own instanceof Record record && other instanceof Record others && !whole && hasParts(record)) {
            return record(record, others);
        }
        return now() ? other : own;
    }

    private static boolean hasParts(Record record) {
        return record.getClass().getPackageName().equals("housewright.model");
    }

    private Map<Object, Object> map(Map<?, ?> own, Map<?, ?> other) {
        Map<Object, Object> mixed = new LinkedHashMap<>();
        List<?> others = List.copyOf(other.values());
        own.forEach((key, value) -> {
            if (!now()) {
                Object each = others.isEmpty() ? value : others.get(random.nextInt(others.size()));
                mixed.put(key, now() ? value(value, each) : value);
            }
        });
        other.forEach((key, value) -> {
            if (now()) {
                mixed.putIfAbsent(key, value);
            }
        });
        return mixed;
    }

    private List<Object> list(List<?> own, List<?> other) {
        List<Object> mixed = new ArrayList<>();
        for (Object each : own) {
            if (now() && !other.isEmpty()) {
                mixed.add(other.get(random.nextInt(other.size())));
            }
            if (!now()) {
                mixed.add(each);
            }
        }
        for (Object each : other) {
            if (now()) {
                mixed.add(each);
            }
        }
        return mixed;
    }
}
