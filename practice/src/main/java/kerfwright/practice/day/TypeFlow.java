package kerfwright.practice.day;

import com.google.ortools.sat.IntVar;
import java.util.function.ToLongFunction;

/** The flow of one type in a model: how it is hinted, and how a solution of it is read. */
interface TypeFlow {
  void hint(Timetable t, int k, FlowHint hint);

  FlowReader.Ladder ladder();

  /** Level each served demand draws from; 0 where short. */
  int[] served(ToLongFunction<IntVar> value);

  /** Instruments put into a load, by slot and level less one. */
  int[][] loaded(ToLongFunction<IntVar> value);
}
