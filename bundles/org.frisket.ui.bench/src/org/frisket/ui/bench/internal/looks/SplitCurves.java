package org.frisket.ui.bench.internal.looks;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;

/** Curves that enclose something, and those that stay open. */
public record SplitCurves(Outline closed, Outline open) {

	public static SplitCurves of(Outline curves) {
		Map<Boolean, List<Contour>> split = curves.contours().stream()
				.collect(Collectors.partitioningBy(Contour::isClosed));
		return new SplitCurves(new Outline(split.get(true)), new Outline(split.get(false)));
	}
}
