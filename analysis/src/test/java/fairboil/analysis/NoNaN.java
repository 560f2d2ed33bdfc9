package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** Looks for numbers that are none. */
public final class NoNaN {

  private NoNaN() {}

  /** Looks into records, lists and optionals for a NaN; only figures may hide one, as unknown. */
  public static void assertNoNaN(Object value, String where) {
    if (value instanceof Double number) {
      assertThat(number).as(where).isNotNaN();
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(each -> assertNoNaN(each, where));
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((key, each) -> assertNoNaN(each, where + "." + key));
    } else if (value instanceof Collection<?> collection) {
      collection.forEach(each -> assertNoNaN(each, where));
    } else if (value instanceof Record) {
      for (RecordComponent component : value.getClass().getRecordComponents()) {
        assertNoNaN(read(component, value), where + "." + component.getName());
      }
    }
  }

  private static Object read(RecordComponent component, Object of) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException unreadable) {
      throw new LinkageError(component.getName(), unreadable);
    }
  }
}
