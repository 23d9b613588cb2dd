package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.junit.jupiter.api.Test;

class ClustersTest {

	private static final double MARGIN = 0.05;
	private static final String ANGLE = "M0 0H10V2H2V10H0Z";

	private static List<List<Integer>> clusters(String... pathData) {
		List<Contour> contours = List.of(pathData).stream().map(each -> PathData.parse(each).contours().get(0)).toList();
		return Clusters.of(contours, MARGIN, Monitor.NONE);
	}

	@Test
	void contoursWhoseBoxesMeetButNotTheirSegmentsAreApart() {
		assertEquals(List.of(List.of(0), List.of(1)), clusters(ANGLE, "M4 4H14V14H4Z"));
	}

	@Test
	void contoursNearerThanTheMarginAreTogether() {
		assertEquals(List.of(List.of(0, 1)), clusters(ANGLE, "M2.09 4H14V14H2.09Z"));
		assertEquals(List.of(List.of(0), List.of(1)), clusters(ANGLE, "M2.11 4H14V14H2.11Z"));
	}

	@Test
	void contourWithinAnotherIsWithIt() {
		assertEquals(List.of(List.of(0, 1)), clusters("M0 0H30V30H0Z", "M10 10H20V20H10Z"));
	}

	@Test
	void thirdContourTiesTwoTogether() {
		assertEquals(List.of(List.of(0, 1, 2)), clusters(ANGLE, "M4 4H14V14H4Z", "M1 1H5V5H1Z"));
	}
}
