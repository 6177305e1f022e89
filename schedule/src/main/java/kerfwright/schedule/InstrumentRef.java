package kerfwright.schedule;

/**
 * One physical instrument: its type and its place in that type's list.
 *
 * @param type the type's name
 * @param index counted from 0
 */
public record InstrumentRef(String type, int index) implements Comparable<InstrumentRef> {
  @Override
  public int compareTo(InstrumentRef other) {
    int byType = type.compareTo(other.type);
    return byType != 0 ? byType : Integer.compare(index, other.index);
  }
}
