package org.frisket.typography.face;

/**
 * A style that the maker of a variable font has set up.
 *
 * @param postScriptName may be empty
 */
public record NamedInstance(String name, String postScriptName, AxisSettings settings) {
}
