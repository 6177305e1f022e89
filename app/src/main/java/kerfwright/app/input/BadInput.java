package kerfwright.app.input;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.quantity.Message;

/** What was handed in cannot be used; carries every fault found, never only the first. */
public final class BadInput extends Exception {
  private static final long serialVersionUID = 1L;

  /** So many faults are told; who has put them right may ask again. */
  public static final int MOST = 100;

  private final transient List<Fault> faults;

  public BadInput(List<Fault> faults) {
    super(faults.isEmpty() ? "" : faults.get(0).in(Say.in(Language.ENGLISH)));
    this.faults = List.copyOf(faults.size() > MOST ? first(faults) : faults);
  }

  private static List<Fault> first(List<Fault> all) {
    List<Fault> some = new ArrayList<>(all.subList(0, MOST));
    Message more = Message.of("fault.more", all.size() - MOST);
    some.add(new Fault(all.get(0).origin(), 0, "", more, null));
    return some;
  }

  public BadInput(String origin, Message problem) {
    this(List.of(new Fault(origin, 0, "", problem, null)));
  }

  public List<Fault> faults() {
    return faults;
  }
}
