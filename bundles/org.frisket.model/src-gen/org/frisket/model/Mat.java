/**
 */
package org.frisket.model;

import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mat</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A shape that follows the elements it stands behind. It holds no geometry of its own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Mat#getBehind <em>Behind</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getCorners <em>Corners</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getMitreLimit <em>Mitre Limit</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getHoles <em>Holes</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getSmoothing <em>Smoothing</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getForm <em>Form</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getReach <em>Reach</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getShadowX <em>Shadow X</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getShadowY <em>Shadow Y</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getFrameKind <em>Frame Kind</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getFrameMargin <em>Frame Margin</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getFrameWidth <em>Frame Width</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getCornerRadius <em>Corner Radius</em>}</li>
 *   <li>{@link org.frisket.model.Mat#getSmallestHole <em>Smallest Hole</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Mat extends Element {
	/**
	 * Returns the value of the '<em><b>Behind</b></em>' reference list.
	 * The list contents are of type {@link org.frisket.model.Element}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The elements whose shape it follows; their order has no meaning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Behind</em>' reference list.
	 * @generated
	 */
	List<Element> getBehind();

	/**
	 * Returns the value of the '<em><b>Distance</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far its edge stands outside theirs, in mm; negative makes it smaller.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance</em>' attribute.
	 * @see #setDistance(double)
	 * @generated
	 */
	double getDistance();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getDistance <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance</em>' attribute.
	 * @see #getDistance()
	 * @generated
	 */
	void setDistance(double value);

	/**
	 * Returns the value of the '<em><b>Corners</b></em>' attribute.
	 * The default value is <code>"round"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.CornerJoin}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How its outer corners are made.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Corners</em>' attribute.
	 * @see org.frisket.model.CornerJoin
	 * @see #setCorners(CornerJoin)
	 * @generated
	 */
	CornerJoin getCorners();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getCorners <em>Corners</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Corners</em>' attribute.
	 * @see org.frisket.model.CornerJoin
	 * @see #getCorners()
	 * @generated
	 */
	void setCorners(CornerJoin value);

	/**
	 * Returns the value of the '<em><b>Mitre Limit</b></em>' attribute.
	 * The default value is <code>"4"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Longest mitre as a multiple of the distance; longer ones are bevelled.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mitre Limit</em>' attribute.
	 * @see #setMitreLimit(double)
	 * @generated
	 */
	double getMitreLimit();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getMitreLimit <em>Mitre Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mitre Limit</em>' attribute.
	 * @see #getMitreLimit()
	 * @generated
	 */
	void setMitreLimit(double value);

	/**
	 * Returns the value of the '<em><b>Holes</b></em>' attribute.
	 * The default value is <code>"keep"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.HoleRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What becomes of holes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Holes</em>' attribute.
	 * @see org.frisket.model.HoleRule
	 * @see #setHoles(HoleRule)
	 * @generated
	 */
	HoleRule getHoles();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getHoles <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Holes</em>' attribute.
	 * @see org.frisket.model.HoleRule
	 * @see #getHoles()
	 * @generated
	 */
	void setHoles(HoleRule value);

	/**
	 * Returns the value of the '<em><b>Smoothing</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm to which hollows are filled and tips are blunted; 0 leaves them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Smoothing</em>' attribute.
	 * @see #setSmoothing(double)
	 * @generated
	 */
	double getSmoothing();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getSmoothing <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Smoothing</em>' attribute.
	 * @see #getSmoothing()
	 * @generated
	 */
	void setSmoothing(double value);

	/**
	 * Returns the value of the '<em><b>Form</b></em>' attribute.
	 * The default value is <code>"follow"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.MatForm}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What shape it makes of theirs before its edge is moved outside.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Form</em>' attribute.
	 * @see org.frisket.model.MatForm
	 * @see #setForm(MatForm)
	 * @generated
	 */
	MatForm getForm();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getForm <em>Form</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Form</em>' attribute.
	 * @see org.frisket.model.MatForm
	 * @see #getForm()
	 * @generated
	 */
	void setForm(MatForm value);

	/**
	 * Returns the value of the '<em><b>Reach</b></em>' attribute.
	 * The default value is <code>"10"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a hollow hull: the widest mouth in mm that it bridges.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reach</em>' attribute.
	 * @see #setReach(double)
	 * @generated
	 */
	double getReach();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getReach <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reach</em>' attribute.
	 * @see #getReach()
	 * @generated
	 */
	void setReach(double value);

	/**
	 * Returns the value of the '<em><b>Shadow X</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a shadow: how far it falls to the right, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shadow X</em>' attribute.
	 * @see #setShadowX(double)
	 * @generated
	 */
	double getShadowX();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getShadowX <em>Shadow X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shadow X</em>' attribute.
	 * @see #getShadowX()
	 * @generated
	 */
	void setShadowX(double value);

	/**
	 * Returns the value of the '<em><b>Shadow Y</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a shadow: how far it falls downwards, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shadow Y</em>' attribute.
	 * @see #setShadowY(double)
	 * @generated
	 */
	double getShadowY();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getShadowY <em>Shadow Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shadow Y</em>' attribute.
	 * @see #getShadowY()
	 * @generated
	 */
	void setShadowY(double value);

	/**
	 * Returns the value of the '<em><b>Frame Kind</b></em>' attribute.
	 * The default value is <code>"rectangle"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.FrameKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a frame: what it follows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Kind</em>' attribute.
	 * @see org.frisket.model.FrameKind
	 * @see #setFrameKind(FrameKind)
	 * @generated
	 */
	FrameKind getFrameKind();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getFrameKind <em>Frame Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Kind</em>' attribute.
	 * @see org.frisket.model.FrameKind
	 * @see #getFrameKind()
	 * @generated
	 */
	void setFrameKind(FrameKind value);

	/**
	 * Returns the value of the '<em><b>Frame Margin</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a frame: from the box about the elements out to its inner edge, in mm; the distance is added to it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Margin</em>' attribute.
	 * @see #setFrameMargin(double)
	 * @generated
	 */
	double getFrameMargin();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getFrameMargin <em>Frame Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Margin</em>' attribute.
	 * @see #getFrameMargin()
	 * @generated
	 */
	void setFrameMargin(double value);

	/**
	 * Returns the value of the '<em><b>Frame Width</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of a frame: its width in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Width</em>' attribute.
	 * @see #setFrameWidth(double)
	 * @generated
	 */
	double getFrameWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getFrameWidth <em>Frame Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Width</em>' attribute.
	 * @see #getFrameWidth()
	 * @generated
	 */
	void setFrameWidth(double value);

	/**
	 * Returns the value of the '<em><b>Corner Radius</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm that its corners are rounded with; 0 leaves them sharp.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Corner Radius</em>' attribute.
	 * @see #setCornerRadius(double)
	 * @generated
	 */
	double getCornerRadius();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getCornerRadius <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Corner Radius</em>' attribute.
	 * @see #getCornerRadius()
	 * @generated
	 */
	void setCornerRadius(double value);

	/**
	 * Returns the value of the '<em><b>Smallest Hole</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * With the rule fillSmall: a hole is filled unless a disc of this diameter in mm has room in it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Smallest Hole</em>' attribute.
	 * @see #setSmallestHole(double)
	 * @generated
	 */
	double getSmallestHole();

	/**
	 * Sets the value of the '{@link org.frisket.model.Mat#getSmallestHole <em>Smallest Hole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Smallest Hole</em>' attribute.
	 * @see #getSmallestHole()
	 * @generated
	 */
	void setSmallestHole(double value);

} // Mat
