package kerfwright.app.daypage;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import kerfwright.app.feature.Feature;
import kerfwright.app.template.Templates;
import kerfwright.app.today.Visit;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.daylist.TrayService;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.kept.KeptCases;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.restock.PurchaseRequests;
import kerfwright.practice.setting.Settings;

/** The day wired together: its pages, and what it tells the first page. */
public final class DayFeature implements Feature {
  private static final int VISITS = 4;

  private final DayService service;
  private final List<Feature> parts;
  private final TrayService trays;
  private final Clock clock;

  public DayFeature(
      DayBooks books,
      DrawerService drawerService,
      Loads loads,
      PurchaseRequests requests,
      CutRecord record,
      Settings settings,
      CaseNeeds needs,
      KeptCases cases,
      Templates templates,
      Clock clock) {
    this.clock = clock;
    Drawer drawer = drawerService.drawer();
    trays = new TrayService(drawerService);
    DayMoves round = new DayMoves(books, trays, loads, settings, clock);
    service =
        new DayService(books, drawer, settings, needs, round, clock, new ConcurrentHashMap<>());
    TypeWords types = new TypeWords(drawer);
    parts =
        List.of(
            new WeekPages(service, record, types, templates, clock),
            new DaySettingPages(settings, service, templates),
            new BookingPages(service, types, cases, templates, needs),
            new DayPages(service, requests, types, cases, templates));
  }

  @Override
  public List<Feature> parts() {
    return parts;
  }

  /** A load was started or failed: today's plan follows. */
  public void loadsChanged() {
    service.loadsChanged();
  }

  /** Handpieces, hand instruments and tips on the trays of a case today. */
  public Set<UUID> laidOut(String caseReference) {
    LocalDate today = service.today();
    return service.books().read(today).bookings().stream()
        .filter(one -> one.caseReference().equalsIgnoreCase(caseReference))
        .flatMap(one -> trays.laidBeside(today, one).stream())
        .map(StockItem::id)
        .collect(Collectors.toSet());
  }

  /** The next appointments of today, for the first page. */
  public List<Visit> nextVisits(Say say) {
    DayBook book = service.books().read(service.today());
    PlannedDay planned = book.planned();
    LocalTime now = LocalTime.now(clock);
    List<Visit> visits = new ArrayList<>();
    for (Booking b : book.bookings()) {
      if (b.end().isAfter(now) && visits.size() < VISITS) {
        Tray tray = Tray.of(b, planned);
        int missing = tray.missing().size();
        String told =
            planned == null
                ? say.at("day.tray-not-planned")
                : missing == 0 ? say.at("day.tray-complete") : say.at("day.tray-short", missing);
        visits.add(new Visit(b.start(), tray.what(), told, missing, "/day/" + book.date()));
      }
    }
    return visits;
  }
}
