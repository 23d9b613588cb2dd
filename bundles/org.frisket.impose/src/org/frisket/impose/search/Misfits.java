package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.impose.shape.Solid;

/**
 * Shapes that found no place on a sheet. Among very many different ones, those whose box is as large both ways as that of
 * one which found none are not tried either.
 */
final class Misfits {

	private final Shapes shapes;
	private final Set<Integer> tried = new HashSet<>();
	private final List<Solid> least = new ArrayList<>();

	Misfits(Shapes shapes) {
		this.shapes = shapes;
	}

	void add(int shape) {
		tried.add(shape);
		if (shapes.isCrowd()) {
			Solid solid = first(shape);
			least.removeIf(other -> isAsLarge(other, solid));
			least.add(solid);
		}
	}

	boolean contains(int shape) {
		return tried.contains(shape)
				|| shapes.isCrowd() && least.stream().anyMatch(other -> isAsLarge(first(shape), other));
	}

	private Solid first(int shape) {
		return shapes.solid(shape, shapes.allowed[shape][0]);
	}

	private static boolean isAsLarge(Solid one, Solid other) {
		return one.maxX() - one.minX() >= other.maxX() - other.minX()
				&& one.maxY() - one.minY() >= other.maxY() - other.minY();
	}
}
