package org.frisket.impose.search;

/** The ways out of what is in a part's way: the two that count most, and the mean of all. */
final class Ways {

	private double most;
	private double next;
	private double sum;
	private double meanX;
	private double meanY;

	/** The way out of what costs most. */
	double firstX;
	double firstY;
	double firstDepth;
	/** The way out of what costs next to most. */
	double secondX;
	double secondY;
	double secondDepth;

	void clear() {
		most = 0;
		next = 0;
		sum = 0;
		meanX = 0;
		meanY = 0;
	}

	void add(double x, double y, double depth, double weight) {
		double loss = depth * weight;
		sum += weight;
		meanX += weight * x;
		meanY += weight * y;
		if (loss > most) {
			next = most;
			secondX = firstX;
			secondY = firstY;
			secondDepth = firstDepth;
			most = loss;
			firstX = x;
			firstY = y;
			firstDepth = depth;
		} else if (loss > next) {
			next = loss;
			secondX = x;
			secondY = y;
			secondDepth = depth;
		}
	}

	boolean none() {
		return most == 0;
	}

	boolean several() {
		return next > 0;
	}

	double meanX() {
		return meanX / sum;
	}

	double meanY() {
		return meanY / sum;
	}

	/** Twice the area between both ways: the way out of both at once is found if it is not 0. */
	double det() {
		return firstX * secondY - firstY * secondX;
	}

	/** The way out of both at once, as if their rims were straight. */
	double bothX() {
		return (firstDepth * firstDepth * secondY - secondDepth * secondDepth * firstY) / det();
	}

	double bothY() {
		return (firstX * secondDepth * secondDepth - secondX * firstDepth * firstDepth) / det();
	}
}
