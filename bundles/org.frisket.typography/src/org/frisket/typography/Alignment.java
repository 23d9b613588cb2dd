package org.frisket.typography;

/** How lines of different width stand to each other; justified ones are stretched to the same width. */
public enum Alignment {
	LEFT, CENTRE, RIGHT, JUSTIFY
}
