package kerfwright.app.web;

import kerfwright.planner.casework.CutCase;

/** A case to start from, and the query that fills the form with it. */
public record ExampleCase(CutCase cutCase, String query) {}
