package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.JudgedBy;

/**
 * One jurisdiction's rules, loaded, checked and proved.
 *
 * @param id name of its folder
 * @param title title
 * @param authority who to ask
 * @param jurisdictions codes in {@code record.jurisdiction} that it judges
 * @param edition date of the edition; its examples are judged as of this day
 * @param judgedBy the date that decides which text is in force, where a rule does not say
 * @param notice what the pack says on its face, may be empty
 * @param builtOn ids of the packs that it builds on, in order
 * @param sources all sources by id, inherited ones too
 * @param tables all tables by name, inherited ones too
 * @param drops rules dropped, by this pack or those it builds on
 * @param mustApply keys of entries that always apply
 * @param waivable ids of the rules that a variance may waive; null where any may be
 * @param figures figures that this pack or those it builds on set, by name, in SI
 * @param rules all rules that run: those it builds on first (in place where replaced), then its own
 * @param files the files that it was loaded from, those it builds on first
 */
public record Pack(
    String id,
    String title,
    String authority,
    List<String> jurisdictions,
    LocalDate edition,
    JudgedBy judgedBy,
    String notice,
    List<String> builtOn,
    Map<String, Source> sources,
    Map<String, Table> tables,
    List<Drop> drops,
    List<String> mustApply,
    @Nullable List<String> waivable,
    Map<String, Double> figures,
    List<Rule> rules,
    List<PackFile> files) {

  public Pack {
    jurisdictions = List.copyOf(jurisdictions);
    builtOn = List.copyOf(builtOn);
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    tables = Collections.unmodifiableMap(new LinkedHashMap<>(tables));
    drops = List.copyOf(drops);
    mustApply = List.copyOf(mustApply);
    waivable = waivable == null ? null : List.copyOf(waivable);
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    rules = List.copyOf(rules);
    files = List.copyOf(files);
  }

  /** True if a variance may waive the rule of this id. */
  public boolean mayWaive(String rule) {
    return waivable == null || waivable.contains(rule);
  }
}
