package kerfwright.practice.restock;

import java.time.LocalDate;
import java.util.List;

/** Where the wishes of planned days are kept. */
public interface PurchaseRequests {
  /** Every wish, by type and day. */
  List<PurchaseRequest> all();

  /** Keeps a wish in place of that of the same type and day. */
  void keep(PurchaseRequest request);

  /** Takes a wish off the list. */
  void drop(String type, LocalDate day);
}
