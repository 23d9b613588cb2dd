/** Exports that a studio does again and again, by name, in text files of its folder. */
package org.frisket.export.preset;
