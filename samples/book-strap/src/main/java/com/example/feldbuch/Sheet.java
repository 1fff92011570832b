package com.example.feldbuch;

/** A size of sheet, by its name in the table. */
public enum Sheet {
    A4,
    A5,
    A6,
    A7,
    B5,
    B6
}
