package org.frisket.toolpath;

import java.util.Objects;

import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;

/**
 * How a tool is led along a line.
 *
 * @param id    how lines name it
 * @param blade by how much its tip trails, and the corners it is swung round at; an offset of 0 for what does not trail
 * @param drive how fast it goes
 */
public record ToolMotion(String id, TrailingBlade blade, Drive drive) {

	public ToolMotion {
		Objects.requireNonNull(id);
		Objects.requireNonNull(blade);
		Objects.requireNonNull(drive);
	}
}
