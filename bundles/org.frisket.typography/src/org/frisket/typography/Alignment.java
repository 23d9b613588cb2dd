package org.frisket.typography;

/** How lines of different width stand to each other. */
public enum Alignment {
	LEFT, CENTRE, RIGHT
}
