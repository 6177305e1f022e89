package kerfwright.practice.drawer;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.tool.LifeLeft;
import org.jspecify.annotations.Nullable;

/**
 * One physical piece of the drawer, a rotary instrument or one of {@link PieceKind}, or a counted
 * lot of equal ones that share one history.
 *
 * @param id made by the program, time-ordered
 * @param version grows by one with every change; a change that names an older one is refused
 * @param label what the practice calls it; no two in the drawer share one
 * @param pieces 1 for one physical instrument, more for a lot
 * @param fields what was written down: number, US size or single properties, greatest speed; of a
 *     piece that is no rotary instrument its kind alone
 * @param rotary what the catalogue makes of it; null for a piece that is no rotary instrument
 * @param singleUse never reprocessed
 * @param place where it is kept, may be empty
 * @param price what one piece cost, in the practice's own currency
 * @param uses how often it was used
 * @param sterilisations how often it was sterilised
 * @param cutMm3ByMaterial volume cut, by material id
 * @param state where it is in its round
 * @param removed taken back after an entry by mistake; its history stays
 */
public record StockItem(
    UUID id,
    int version,
    String label,
    int pieces,
    DrawerFields fields,
    @Nullable InstrumentProperties rotary,
    boolean singleUse,
    String place,
    @Nullable BigDecimal price,
    int uses,
    int sterilisations,
    Map<String, Double> cutMm3ByMaterial,
    InstrumentState state,
    boolean removed) {
  /** Most pieces in a lot. */
  public static final int MOST_PIECES = 10_000;

  /** Most letters of a label. */
  public static final int LONGEST_LABEL = 40;

  private static final String LABEL = "[\\p{L}\\p{N}._/#-]{1," + LONGEST_LABEL + "}";

  public StockItem {
    if (!labelIsSound(label)) {
      throw new IllegalArgumentException("Not a label: '" + label + "'");
    }
    if (pieces < 1 || pieces > MOST_PIECES || uses < 0 || sterilisations < 0 || version < 1) {
      throw new IllegalArgumentException(
          label + ": pieces " + pieces + ", uses " + uses + ", sterilisations " + sterilisations);
    }
    if (price != null && price.signum() < 0) {
      throw new IllegalArgumentException(label + ": price " + price);
    }
    cutMm3ByMaterial = Map.copyOf(cutMm3ByMaterial);
  }

  /** A new item as it comes into the drawer; the fields must name an instrument. */
  public static StockItem fresh(UUID id, String label, DrawerFields fields) {
    return new StockItem(
        id,
        1,
        label,
        1,
        fields,
        rotary(fields),
        false,
        "",
        null,
        0,
        0,
        Map.of(),
        InstrumentState.CLEAN,
        false);
  }

  /** Up to 40 letters, digits and . _ / # - without spaces, as in the drawer file. */
  public static boolean labelIsSound(String label) {
    return label.matches(LABEL);
  }

  /** What such fields name: null for a kind that is no rotary instrument. */
  public static @Nullable InstrumentProperties rotary(DrawerFields fields) {
    return PieceKinds.byId(fields.kind()).isPresent()
        ? null
        : InstrumentResolver.resolve(fields).orThrow();
  }

  public boolean isRotary() {
    return rotary != null;
  }

  /** What sort of piece it is where it is no rotary instrument. */
  public Optional<PieceKind> pieceKind() {
    return rotary == null ? PieceKinds.byId(fields.kind()) : Optional.empty();
  }

  /** True where it is a piece of this kind, which no rotary instrument is. */
  public boolean is(String kind) {
    return pieceKind().filter(one -> one.id().equals(kind)).isPresent();
  }

  /**
   * What the rotary instrument is.
   *
   * @throws IllegalStateException where it is none
   */
  public InstrumentProperties properties() {
    if (rotary == null) {
      throw new IllegalStateException(label + " is no rotary instrument");
    }
    return rotary;
  }

  /** Share of one piece's life that is left; empty where its working part is not known. */
  public Optional<Estimate> lifeLeft() {
    return rotary == null
        ? Optional.empty()
        : LifeLeft.of(
            new DrawerInstrument(label, rotary, uses, sterilisations, DrawerInstrument.State.CLEAN),
            cutMm3ByMaterial);
  }

  public boolean lot() {
    return pieces > 1;
  }

  /** This item with some of it changed, one version on. */
  public StockItem next(java.util.function.Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    draft.version = version + 1;
    return draft.item();
  }

  /** Pieces out of this lot as a new item, with its counts and place. */
  public StockItem part(UUID newId, String newLabel, int some) {
    return new StockItem(
        newId,
        1,
        newLabel,
        some,
        fields,
        rotary,
        singleUse,
        place,
        price,
        uses,
        sterilisations,
        cutMm3ByMaterial,
        state,
        false);
  }

  /** A new item that lies on a tray from its first version on. */
  StockItem laid() {
    Draft draft = new Draft(this);
    draft.state = InstrumentState.ON_TRAY;
    return draft.item();
  }

  /** The same as the first version of itself: for an item that was not written yet. */
  public StockItem asNew() {
    Draft draft = new Draft(this);
    draft.version = 1;
    return draft.item();
  }

  /** Equal but for the version: what an undo must bring back. */
  public boolean sameBut(StockItem other) {
    Draft draft = new Draft(other);
    draft.version = version;
    return draft.item().equals(this);
  }

  /** The parts of an item while it is changed. */
  public static final class Draft {
    private final UUID id;
    private int version;
    public String label;
    public int pieces;
    private DrawerFields fields;
    private @Nullable InstrumentProperties rotary;
    public boolean singleUse;
    public String place;
    public @Nullable BigDecimal price;
    public int uses;
    public int sterilisations;
    public final Map<String, Double> cutMm3ByMaterial;
    public InstrumentState state;
    public boolean removed;

    Draft(StockItem item) {
      id = item.id;
      version = item.version;
      label = item.label;
      pieces = item.pieces;
      fields = item.fields;
      rotary = item.rotary;
      singleUse = item.singleUse;
      place = item.place;
      price = item.price;
      uses = item.uses;
      sterilisations = item.sterilisations;
      cutMm3ByMaterial = new TreeMap<>(item.cutMm3ByMaterial);
      state = item.state;
      removed = item.removed;
    }

    /** Says anew what the instrument is; the fields must name one. */
    public void fields(DrawerFields changed) {
      rotary = rotary(changed);
      fields = changed;
    }

    StockItem item() {
      return new StockItem(
          id,
          version,
          label,
          pieces,
          fields,
          rotary,
          singleUse,
          place,
          price,
          uses,
          sterilisations,
          cutMm3ByMaterial,
          state,
          removed);
    }
  }
}
