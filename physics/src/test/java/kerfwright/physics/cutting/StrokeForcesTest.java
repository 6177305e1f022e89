package kerfwright.physics.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.physics.cutting.StrokeForces.Round;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Rotation clockwise seen from the shank (common practice); the sides follow from vectors worked
 * out here, seen from the shank: x right, y along the travel.
 */
class StrokeForcesTest {
  private static final Engagement SHALLOW = new Engagement(1.2e-3, 3e-3, 50e-6);
  private static final Engagement SLOT = new Engagement(1.2e-3, 3e-3, 1.2e-3);

  @Test
  void counterClockwiseOutsideACrownAndClockwiseInsideACavityAreAgainstRotation() {
    assertEquals(WorkSide.LEFT, StrokeForces.side(Round.COUNTER_CLOCKWISE, false));
    assertEquals(WorkSide.RIGHT, StrokeForces.side(Round.CLOCKWISE, false));
    assertEquals(WorkSide.LEFT, StrokeForces.side(Round.CLOCKWISE, true));
    assertEquals(WorkSide.RIGHT, StrokeForces.side(Round.COUNTER_CLOCKWISE, true));
  }

  /**
   * Going round a centre, the instrument stands at p (from the centre) and travels along t. Outside
   * a crown the work lies at -p, inside an opening at +p; it is on the left where t x work > 0.
   */
  @ParameterizedTest
  @EnumSource(Round.class)
  void theSideFollowsFromTheCrossProductOfTravelAndWork(Round round) {
    double px = 1;
    double ty = round == Round.COUNTER_CLOCKWISE ? 1 : -1; // tangent at p = (1, 0)
    for (boolean inside : new boolean[] {true, false}) {
      double workX = inside ? px : -px;
      double cross = 0 * 0 - ty * workX;
      WorkSide expected = cross > 0 ? WorkSide.LEFT : WorkSide.RIGHT;
      assertEquals(expected, StrokeForces.side(round, inside));
    }
  }

  /** Blade velocity of clockwise rotation at position (cos a, sin a): (sin a, -cos a). */
  @ParameterizedTest
  @EnumSource(WorkSide.class)
  void theSignFollowsFromTheBladesVelocityOverTheArc(WorkSide side) {
    double arc = ChipGeometry.engagementAngleRad(50e-6, 1.2e-3);
    double along = 0;
    int steps = 1000;
    for (int i = 0; i < steps; i++) {
      double fromWall = (i + 0.5) * arc / steps;
      double angle = side == WorkSide.LEFT ? Math.PI - fromWall : fromWall;
      along -= -Math.cos(angle) / steps; // force on the blade opposes its velocity
    }
    double computed = StrokeForces.alongTravelN(side, 1, SHALLOW);
    assertEquals(Math.signum(along), Math.signum(computed));
    assertEquals(along, computed, 0.02, "a uniform force over the arc, nearly its middle");
  }

  @Test
  void againstRotationPushesBackWithRotationPullsOn() {
    assertTrue(StrokeForces.againstRotation(WorkSide.LEFT));
    assertTrue(!StrokeForces.againstRotation(WorkSide.RIGHT));
    double half = ChipGeometry.engagementAngleRad(50e-6, 1.2e-3) / 2;
    assertEquals(
        -0.6 * Math.cos(half), StrokeForces.alongTravelN(WorkSide.LEFT, 0.6, SHALLOW), 1e-12);
    assertEquals(
        0.6 * Math.cos(half), StrokeForces.alongTravelN(WorkSide.RIGHT, 0.6, SHALLOW), 1e-12);
  }

  @Test
  void inAFullSlotTheTwoFlanksCancel() {
    assertEquals(0, StrokeForces.alongTravelN(WorkSide.LEFT, 1, SLOT), 1e-12);
    assertEquals(0, StrokeForces.alongTravelN(WorkSide.RIGHT, 1, SLOT), 1e-12);
  }
}
