package kerfwright.app.input;

import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Storage that holds nothing but one thing, for readers that ask a storage. */
final class Absent {
  private Absent() {}

  /** Whoever looks for one finds it; everything else is empty, and nothing is kept. */
  static <T> T but(Object one, Class<T> storage) {
    return storage.cast(
        Proxy.newProxyInstance(
            storage.getClassLoader(),
            new Class<?>[] {storage},
            (proxy, method, arguments) -> {
              Class<?> type = method.getReturnType();
              return type == Optional.class
                  ? Optional.of(one)
                  : type == boolean.class
                      ? Boolean.FALSE
                      : type == long.class ? 0L : type == Map.class ? Map.of() : List.of();
            }));
  }
}
