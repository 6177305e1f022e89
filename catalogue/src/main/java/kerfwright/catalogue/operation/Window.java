package kerfwright.catalogue.operation;

import java.util.List;
import java.util.Set;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShapeFamily;
import org.jspecify.annotations.Nullable;

/**
 * What an operation allows: the models choose inside it, and say so where they would have chosen
 * outside. Sizes are formulas of the case in millimetres (outline width W, slot width s, ...).
 *
 * @param kinds kinds of instrument, preferred first; empty where nothing rotary works
 * @param forms head shapes, preferred first; empty where any will do
 * @param grits grit classes allowed for abrasive kinds; empty where any will do
 * @param leastBlades fewest blades of a bladed kind
 * @param mostBlades most blades of a bladed kind
 * @param safeEnd true where the tip must not cut, unless the head is a round one
 * @param headLeast smallest head, mm
 * @param headMost largest head, mm
 * @param reach how deep the head and its neck must get, mm
 * @param otherTools hand instruments, tips, reamers, brushes that do it too, by id
 * @param abrasive what a polisher must carry, e.g. diamond for zirconia; empty where any will do
 */
public record Window(
    List<InstrumentKind> kinds,
    List<ShapeFamily> forms,
    Set<GritClass> grits,
    int leastBlades,
    int mostBlades,
    boolean safeEnd,
    @Nullable Formula headLeast,
    @Nullable Formula headMost,
    @Nullable Formula reach,
    List<String> otherTools,
    String abrasive) {}
