package kerfwright.app.today;

import kerfwright.planner.casework.CutCase;

/** A case to start from, and the query that leads to its plan. */
public record CaseLink(CutCase cutCase, String query) {}
