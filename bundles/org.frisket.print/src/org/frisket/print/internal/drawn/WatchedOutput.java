package org.frisket.print.internal.drawn;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Set;

import com.github.weisj.jsvg.renderer.output.Output;

/**
 * Where jsvg draws to, each shape and picture being a step of the work. Lines that a transformation makes wider one way than
 * the other are filled as the areas that they are: not all that is drawn on can stroke such.
 */
final class WatchedOutput implements InvocationHandler {

	private static final Set<String> STEPS = Set.of("fillShape", "drawShape", "drawImage");

	/** Of a width; finer than it is seen. */
	private static final double SAME = 1e-3;

	private final Output output;
	private final Work work;

	private WatchedOutput(Output output, Work work) {
		this.output = output;
		this.work = work;
	}

	static Output of(Output output, Work work) {
		return (Output) Proxy.newProxyInstance(Output.class.getClassLoader(), new Class<?>[] { Output.class },
				new WatchedOutput(output, work));
	}

	@Override
	public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
		if (STEPS.contains(method.getName())) {
			work.step();
		}
		if (method.getName().equals("drawShape") && !keepsShape(output.transform())) {
			output.fillShape(output.stroke().createStrokedShape((Shape) arguments[0]));
			return null;
		}
		try {
			Object result = method.invoke(output, arguments);
			return result instanceof Output child ? of(child, work) : result;
		} catch (InvocationTargetException e) {
			throw e.getCause();
		}
	}

	/** Whether circles stay circles. */
	private static boolean keepsShape(AffineTransform transform) {
		double across = Math.hypot(transform.getScaleX(), transform.getShearY());
		double down = Math.hypot(transform.getShearX(), transform.getScaleY());
		double slant = transform.getScaleX() * transform.getShearX() + transform.getShearY() * transform.getScaleY();
		return Math.abs(across - down) <= SAME * across && Math.abs(slant) <= SAME * across * down;
	}
}
