package kerfwright.app.label;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.MalformedNumberException;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.planner.casework.Procedure;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.reprocessing.Loads;

/**
 * Finds what was typed among instruments, cases, loads, numbers, procedures and materials; where
 * nothing fits, what begins like it.
 */
public record WordSearch(Drawer drawer, KeptCases cases, CutRecord record, Loads loads) {
  private static final int MOST = 8;
  private static final int LEAST_LETTERS = 2;

  /**
   * Something found.
   *
   * @param text what it is
   * @param link its page
   */
  public record Hit(String text, String link) {}

  /**
   * What was found.
   *
   * @param words the words that were found; a beginning of those typed where those were not
   * @param hits best first
   */
  public record Hits(String words, List<Hit> hits) {
    public Hits {
      hits = List.copyOf(hits);
    }
  }

  /** Everything that fits; where nothing does, everything that fits a beginning of it. */
  public Hits find(Say say, String typed) {
    String words = typed.strip();
    List<Hit> hits = exactly(say, words);
    while (hits.isEmpty() && words.length() > LEAST_LETTERS) {
      words = words.substring(0, words.length() - 1).strip();
      hits = exactly(say, words);
    }
    return new Hits(words, hits);
  }

  private List<Hit> exactly(Say say, String words) {
    List<Hit> hits = new ArrayList<>();
    if (words.length() < LEAST_LETTERS) {
      return hits;
    }
    loads
        .named(words)
        .ifPresent(load -> hits.add(new Hit(load.name(), "/reprocessing/load/" + load.id())));
    for (KeptCase one : cases.list(new KeptCaseQuery(words, null, null, null, null, 0, MOST))) {
      String procedure = Labels.procedure(say, new Procedure(one.procedure()));
      String text = one.reference() + " · " + say.tooth(one.tooth()) + " · " + procedure;
      hits.add(new Hit(text, "/cases/" + one.id()));
    }
    if (!record.list(RecordQuery.ofCase(words, 1)).isEmpty()) {
      hits.add(new Hit(say.at("scan.records-of", words), "/records?case=" + encoded(words)));
    }
    instruments(say, words, hits);
    numbers(say, words, hits);
    String small = words.toLowerCase(Locale.ROOT);
    for (Procedure one : Procedure.all()) {
      String name = Labels.procedure(say, one);
      if (name.toLowerCase(Locale.ROOT).contains(small)) {
        hits.add(new Hit(say.at("scan.plan", name), "/case?procedure=" + one.id()));
      }
    }
    for (String id : Materials.packaged().ids()) {
      String name = Labels.material(say, id);
      if (name.toLowerCase(Locale.ROOT).contains(small)) {
        hits.add(new Hit(name, "/reference/material?id=" + id));
      }
    }
    return hits;
  }

  private void instruments(Say say, String words, List<Hit> hits) {
    var page = drawer.list(new DrawerQuery(words, null, null, null, null, 0, MOST));
    for (StockItem item : page.items()) {
      String looks = kerfwright.app.drawer.ItemWords.what(say, item);
      hits.add(new Hit(item.label() + " · " + looks, "/drawer/item/" + item.id()));
    }
    if (page.found() > MOST) {
      hits.add(new Hit(say.at("scan.all-in-drawer", page.found()), "/drawer?q=" + encoded(words)));
    }
  }

  private static void numbers(Say say, String words, List<Hit> hits) {
    try {
      IsoNumber.parse(words);
      hits.add(new Hit(say.at("scan.iso", words), "/reference/numbers?iso=" + encoded(words)));
    } catch (MalformedNumberException none) {
      String size = words.replaceFirst("(?i)^us *", "");
      UsSizes.find(size)
          .ifPresent(
              us ->
                  hits.add(
                      new Hit(say.at("scan.us", size), "/reference/numbers?us=" + encoded(size))));
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
