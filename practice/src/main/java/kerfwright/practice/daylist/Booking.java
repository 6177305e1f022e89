package kerfwright.practice.daylist;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.schedule.Need;
import org.jspecify.annotations.Nullable;

/**
 * One appointment on the day list. Never a name: the practice's own case reference and a tooth.
 *
 * @param id short and told apart within the day, such as A3
 * @param chair which chair
 * @param start when it starts
 * @param end when it ends
 * @param caseReference the practice's own reference of the case
 * @param tooth FDI number, empty where no tooth is meant
 * @param work what is done, in the practice's own words or the name of a tray
 * @param caseText the case in the words of a case file, where the needs come from its plan
 * @param needs what its tray needs
 * @param pieces handpieces, hand instruments and tips it needs, as far as its plan tells
 */
public record Booking(
    String id,
    String chair,
    LocalTime start,
    LocalTime end,
    String caseReference,
    String tooth,
    String work,
    @Nullable String caseText,
    List<Need> needs,
    List<PieceNeed> pieces) {
  public Booking {
    needs = List.copyOf(needs);
    // a day kept before there were such pieces tells none
    pieces = pieces == null ? List.of() : List.copyOf(pieces);
  }

  /** An appointment that tells nothing beside its rotary instruments. */
  public Booking(
      String id,
      String chair,
      LocalTime start,
      LocalTime end,
      String caseReference,
      String tooth,
      String work,
      @Nullable String caseText,
      List<Need> needs) {
    this(id, chair, start, end, caseReference, tooth, work, caseText, needs, List.of());
  }

  /** The same appointment at another time or in another chair. */
  public Booking at(LocalTime newStart, LocalTime newEnd, String newChair) {
    return new Booking(
        id, newChair, newStart, newEnd, caseReference, tooth, work, caseText, needs, pieces);
  }

  /**
   * What the plan of a day has to find: rotary instruments, and of the other pieces those that are
   * needed for certain.
   *
   * @param ready kinds of which a piece is ready
   * @param there kinds of pieces the drawer has
   */
  List<Need> scheduled(Set<String> ready, Set<String> there) {
    List<Need> all = new ArrayList<>(needs);
    for (PieceNeed piece : pieces) {
      Need need = piece.need(ready, there);
      if (!piece.ifNeeded() && all.stream().noneMatch(one -> one.type().equals(need.type()))) {
        all.add(need);
      }
    }
    return all;
  }

  /** The same appointment with other needs of those the plan of a day has to find. */
  public Booking needing(List<Need> scheduled) {
    List<Need> rotary = new ArrayList<>();
    Set<String> kinds = new HashSet<>();
    for (Need need : scheduled) {
      if (PieceKinds.byId(need.type()).isPresent()) {
        kinds.add(need.type());
      } else {
        rotary.add(need);
      }
    }
    return needing(rotary, pieces.stream().map(one -> one.preferring(kinds)).toList());
  }

  /** The same appointment with other needs of both sorts. */
  public Booking needing(List<Need> others, List<PieceNeed> otherPieces) {
    return new Booking(
        id, chair, start, end, caseReference, tooth, work, caseText, others, otherPieces);
  }
}
