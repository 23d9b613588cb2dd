package org.frisket.geometry.nodes;

/** The two sides of a node in the direction of travel. */
public enum Side {

	IN, OUT;

	public Side other() {
		return this == IN ? OUT : IN;
	}
}
