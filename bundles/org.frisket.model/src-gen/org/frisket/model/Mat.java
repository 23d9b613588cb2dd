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

} // Mat
