package kerfwright.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every bare number of the public physics says its unit in its name, or is known to have none. */
class PublicNamesTest {
  /**
   * Accepted units, always after a lower-case letter or a digit: SI with Per for a fraction, Mm, Ml
   * and Min where a trade figure enters, C for degrees Celsius; or the word seconds in front.
   */
  private static final Pattern UNIT =
      Pattern.compile(
          "seconds[A-Z].*|.*[a-z0-9]("
              + "M|M2|M3|Mm|S|Min|Kg|N|NM|Pa|K|C|J|W|Rad|PaSqrtM"
              + "|NPerM|MPerN|MPerS|MmPerS|M2PerS|M3PerS|MlPerMin|MlPerMinG|KgPerM3"
              + "|JPerM3|JPerM3K|JPerKgK|WPerMK|WPerM2|WPerM2K"
              + "|PerS|PerM|PerM2|PerM3|PerSqrtM)");

  /** Pure numbers, by name. */
  private static final Set<String> DIMENSIONLESS =
      Set.of(
          "hardPhaseShare",
          "protrusionShare",
          "rigidity",
          "edgeShare",
          "brittleShare",
          "cleanShare",
          "chipShare",
          "steadyShare",
          "arcShare",
          "cuttingShare",
          "sharpness",
          "exponent",
          "forceRatio",
          "greatestForceRatio",
          "rubbingRatio",
          "ratio",
          "efficiency",
          "cuttingBlades",
          "reserveLayers",
          "NEEDED",
          "WORN_OUT",
          "LIFE_END",
          "livesUsed",
          "livesInStep",
          "runningInLives",
          "declineLives",
          "slowness",
          "plateau",
          "freshShare",
          "slidingFactor",
          "crackVolume",
          "after",
          "keptShare",
          "LUMPED_SHARE",
          "ofDiamondAfterCycles",
          "ofCarbideAfterCycles",
          "relativeRemainder",
          "reachingShare",
          "wettedShare",
          "heatShare");

  @Test
  void everyPublicNumberNamesItsUnit() {
    List<String> bare = new ArrayList<>();
    int seen = 0;
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("kerfwright.physics")) {
      Class<?> reflected = type.reflect();
      if (Modifier.isPublic(reflected.getModifiers()) && !ofAnyQuantity(reflected)) {
        seen += scan(reflected, bare);
      }
    }
    assertTrue(seen > 150, "only " + seen + " numbers found: is the scan still looking?");
    assertEquals(List.of(), bare);
  }

  private static boolean ofAnyQuantity(Class<?> type) {
    return type.getPackageName().equals("kerfwright.physics.heat.numeric");
  }

  @Test
  void theScanSeesANumberWithoutUnit() {
    List<String> bare = new ArrayList<>();
    scan(Bad.class, bare);
    assertEquals(4, bare.size(), bare.toString());
  }

  /** A constructor, a method, a parameter and a field that would be wrong. */
  public static final class Bad {
    public static final double TURNS = 1;

    public Bad(double load) {}

    public double speed(double[] depths) {
      return depths[0];
    }
  }

  private static int scan(Class<?> type, List<String> bare) {
    int seen = 0;
    List<Executable> open = new ArrayList<>();
    for (Constructor<?> c : type.getDeclaredConstructors()) {
      open.add(c);
    }
    for (Method m : type.getDeclaredMethods()) {
      open.add(m);
      if (isOpen(m.getModifiers()) && isNumber(m.getReturnType())) {
        seen += judge(m.getName(), type + " returns", bare);
      }
    }
    for (Executable e : open) {
      if (!isOpen(e.getModifiers()) || e.isSynthetic()) {
        continue;
      }
      for (Parameter p : e.getParameters()) {
        if (isNumber(p.getType())) {
          assertTrue(p.isNamePresent(), "compile with -parameters");
          seen += judge(p.getName(), type + "." + e.getName() + " takes", bare);
        }
      }
    }
    for (Field f : type.getDeclaredFields()) {
      if (isOpen(f.getModifiers()) && isNumber(f.getType())) {
        seen += judge(f.getName(), type + " holds", bare);
      }
    }
    return seen;
  }

  private static int judge(String name, String where, List<String> bare) {
    boolean constant = name.matches(".*_(S|M|MM|K|PA|PER_S|PER_M)");
    if (!constant && !UNIT.matcher(name).matches() && !DIMENSIONLESS.contains(name)) {
      bare.add(where + " " + name);
    }
    return 1;
  }

  private static boolean isOpen(int modifiers) {
    return Modifier.isPublic(modifiers);
  }

  private static boolean isNumber(Class<?> type) {
    Class<?> inner = type;
    while (inner.isArray()) {
      inner = inner.getComponentType();
    }
    return inner == double.class || inner == float.class;
  }
}
