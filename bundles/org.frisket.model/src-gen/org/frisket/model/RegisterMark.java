/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Register Mark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A mark that is printed on a sheet so that a blade finds the print.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.RegisterMark#getKind <em>Kind</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getX <em>X</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getY <em>Y</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getSize <em>Size</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getWeight <em>Weight</em>}</li>
 *   <li>{@link org.frisket.model.RegisterMark#getQuiet <em>Quiet</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface RegisterMark extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The default value is <code>"disc"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.MarkKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it looks like.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.MarkKind
	 * @see #setKind(MarkKind)
	 * @generated
	 */
	MarkKind getKind();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.frisket.model.MarkKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(MarkKind value);

	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its place in mm from the left edge of the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(double)
	 * @generated
	 */
	double getX();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(double value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its place in mm from the upper edge of the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(double)
	 * @generated
	 */
	double getY();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(double value);

	/**
	 * Returns the value of the '<em><b>Turn</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In degrees, clockwise to the viewer.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turn</em>' attribute.
	 * @see #setTurn(double)
	 * @generated
	 */
	double getTurn();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getTurn <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn</em>' attribute.
	 * @see #getTurn()
	 * @generated
	 */
	void setTurn(double value);

	/**
	 * Returns the value of the '<em><b>Size</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the square that it fills, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size</em>' attribute.
	 * @see #setSize(double)
	 * @generated
	 */
	double getSize();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size</em>' attribute.
	 * @see #getSize()
	 * @generated
	 */
	void setSize(double value);

	/**
	 * Returns the value of the '<em><b>Weight</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its strokes, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weight</em>' attribute.
	 * @see #setWeight(double)
	 * @generated
	 */
	double getWeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getWeight <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weight</em>' attribute.
	 * @see #getWeight()
	 * @generated
	 */
	void setWeight(double value);

	/**
	 * Returns the value of the '<em><b>Quiet</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, how much bare paper is to be around it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quiet</em>' attribute.
	 * @see #setQuiet(double)
	 * @generated
	 */
	double getQuiet();

	/**
	 * Sets the value of the '{@link org.frisket.model.RegisterMark#getQuiet <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quiet</em>' attribute.
	 * @see #getQuiet()
	 * @generated
	 */
	void setQuiet(double value);

} // RegisterMark
