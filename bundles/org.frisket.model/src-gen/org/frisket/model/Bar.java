/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A bar along every line of a wording, or a frame about it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Bar#getKind <em>Kind</em>}</li>
 *   <li>{@link org.frisket.model.Bar#getOffset <em>Offset</em>}</li>
 *   <li>{@link org.frisket.model.Bar#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.frisket.model.Bar#getOverhang <em>Overhang</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Bar extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The default value is <code>"underline"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.BarKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.BarKind
	 * @see #setKind(BarKind)
	 * @generated
	 */
	BarKind getKind();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bar#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.BarKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(BarKind value);

	/**
	 * Returns the value of the '<em><b>Offset</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of an underline, from the baseline down to its top; of a baseline bar, from the baseline down to its lower edge; of a frame, from the letters out to its inner edge; in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offset</em>' attribute.
	 * @see #setOffset(double)
	 * @generated
	 */
	double getOffset();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bar#getOffset <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset</em>' attribute.
	 * @see #getOffset()
	 * @generated
	 */
	void setOffset(double value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(double)
	 * @generated
	 */
	double getThickness();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bar#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(double value);

	/**
	 * Returns the value of the '<em><b>Overhang</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far a bar juts out beyond the line at both ends, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overhang</em>' attribute.
	 * @see #setOverhang(double)
	 * @generated
	 */
	double getOverhang();

	/**
	 * Sets the value of the '{@link org.frisket.model.Bar#getOverhang <em>Overhang</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overhang</em>' attribute.
	 * @see #getOverhang()
	 * @generated
	 */
	void setOverhang(double value);

} // Bar
