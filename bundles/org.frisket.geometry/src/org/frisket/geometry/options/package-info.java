/**
 * Settings as described values: a step, an importer or an exporter says what it takes (name, kind, range, default), and
 * forms, command-line flags, presets and help pages are made of that.
 */
package org.frisket.geometry.options;
