package taperbook.output.article;

import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import taperbook.output.view.Unwrapped;

/**
 * Exposes the components of records to templates by name, besides maps, lists, texts, numbers and
 * booleans. An empty {@link Optional} is a missing value. Methods, classes and all other objects
 * are out of reach.
 */
final class RecordWrapper extends SimpleObjectWrapper {
  private static final ClassValue<List<Method>> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
          List<Method> accessors =
              Stream.of(type.getRecordComponents()).map(RecordComponent::getAccessor).toList();
          // The records are package-private.
          accessors.forEach(accessor -> accessor.setAccessible(true));
          return accessors;
        }
      };

  RecordWrapper() {
    super(Configuration.VERSION_2_3_34);
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    return value instanceof Record view ? wrap(components(view)) : super.handleUnknownType(value);
  }

  private static Map<String, Object> components(Record view) throws TemplateModelException {
    Map<String, Object> components = new LinkedHashMap<>();
    for (Method accessor : ACCESSORS.get(view.getClass())) {
      Object value = value(view, accessor);
      if (value instanceof Record inner && accessor.isAnnotationPresent(Unwrapped.class)) {
        components.putAll(components(inner));
      } else if (value != null) {
        components.put(accessor.getName(), value);
      }
    }
    return components;
  }

  private static @Nullable Object value(Record view, Method accessor)
      throws TemplateModelException {
    try {
      Object value = accessor.invoke(view);
      return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    } catch (ReflectiveOperationException e) {
      throw new TemplateModelException("component " + accessor.getName(), e);
    }
  }
}
