package org.frisket.typography.internal.shape;

import static org.lwjgl.util.harfbuzz.HarfBuzz.*;

import org.frisket.geometry.Outline;
import org.lwjgl.util.harfbuzz.hb_draw_close_path_func_t;
import org.lwjgl.util.harfbuzz.hb_draw_cubic_to_func_t;
import org.lwjgl.util.harfbuzz.hb_draw_line_to_func_t;
import org.lwjgl.util.harfbuzz.hb_draw_move_to_func_t;
import org.lwjgl.util.harfbuzz.hb_draw_quadratic_to_func_t;

/**
 * The five calls by which HarfBuzz draws a glyph. They are made once and live as long as the process; which pen they
 * move is a matter of the thread.
 */
final class HarfBuzzDrawing {

	private static final ThreadLocal<OutlinePen> PEN = new ThreadLocal<>();

	private static final hb_draw_move_to_func_t MOVE_TO = hb_draw_move_to_func_t
			.create((funcs, data, state, x, y, user) -> PEN.get().moveTo(x, y));
	private static final hb_draw_line_to_func_t LINE_TO = hb_draw_line_to_func_t
			.create((funcs, data, state, x, y, user) -> PEN.get().lineTo(x, y));
	private static final hb_draw_quadratic_to_func_t QUADRATIC_TO = hb_draw_quadratic_to_func_t
			.create((funcs, data, state, cx, cy, x, y, user) -> PEN.get().quadraticTo(cx, cy, x, y));
	private static final hb_draw_cubic_to_func_t CUBIC_TO = hb_draw_cubic_to_func_t.create(
			(funcs, data, state, cx1, cy1, cx2, cy2, x, y, user) -> PEN.get().cubicTo(cx1, cy1, cx2, cy2, x, y));
	private static final hb_draw_close_path_func_t CLOSE = hb_draw_close_path_func_t
			.create((funcs, data, state, user) -> PEN.get().close());

	private static final long FUNCTIONS = functions();

	private HarfBuzzDrawing() {
	}

	private static long functions() {
		long functions = hb_draw_funcs_create();
		hb_draw_funcs_set_move_to_func(functions, MOVE_TO, 0, null);
		hb_draw_funcs_set_line_to_func(functions, LINE_TO, 0, null);
		hb_draw_funcs_set_quadratic_to_func(functions, QUADRATIC_TO, 0, null);
		hb_draw_funcs_set_cubic_to_func(functions, CUBIC_TO, 0, null);
		hb_draw_funcs_set_close_path_func(functions, CLOSE, 0, null);
		hb_draw_funcs_make_immutable(functions);
		return functions;
	}

	/** @param unitsPerStep font units to one of the font's own steps */
	static Outline draw(long font, int glyph, double unitsPerStep) {
		OutlinePen pen = new OutlinePen(unitsPerStep, -unitsPerStep);
		PEN.set(pen);
		try {
			hb_font_draw_glyph(font, glyph, FUNCTIONS, 0);
		} finally {
			PEN.remove();
		}
		return pen.outline();
	}
}
