package kerfwright.catalogue.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.operation.OperationTable;
import org.junit.jupiter.api.Test;

class PieceKindsTest {
  @Test
  void everyHandpieceAndEveryToolOfTheOperationsIsAKind() {
    Set<String> named = new TreeSet<>(Handpieces.ids());
    OperationTable table = OperationTable.packaged();
    for (String variant : table.variants()) {
      table.operations(variant).forEach(one -> named.addAll(one.window().otherTools()));
    }
    Set<String> kinds = PieceKinds.all().stream().map(PieceKind::id).collect(Collectors.toSet());
    assertEquals(named, new TreeSet<>(kinds));
    assertTrue(kinds.size() > 10);
  }

  @Test
  void noKindIsCalledLikeAKindOfRotaryInstrument() {
    List<String> both =
        PieceKinds.all().stream()
            .map(PieceKind::id)
            .filter(id -> InstrumentKind.byId(id).isPresent())
            .toList();
    assertEquals(List.of(), both);
  }

  @Test
  void handpiecesAloneAreOiledAndAllOfThemAreHollow() {
    for (PieceKind kind : PieceKinds.all()) {
      boolean handpiece = kind.sort() == PieceKind.Sort.HANDPIECE;
      assertEquals(handpiece, Handpieces.byId(kind.id()).isPresent(), kind.id());
      assertEquals(handpiece, kind.oiled(), kind.id());
      assertTrue(!handpiece || kind.hollow(), kind.id());
    }
  }
}
