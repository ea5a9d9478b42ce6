//! What rods are made of: how stiff each material is, and how heavy.

/// A material a rod can be reckoned with. Figures are ranges, since they differ by alloy, by species
/// and by source; what is reckoned with them takes the softest and the heaviest.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Material {
    /// What it is called.
    pub name: &'static str,
    /// Another spelling of the name.
    spelling: &'static str,
    /// Modulus of elasticity in millions of pounds a square inch, from and to.
    pub million_psi: (f64, f64),
    /// Mass of a cubic metre in kilograms, from and to. Common practice, no source.
    pub kilograms_per_cubic_metre: (f64, f64),
    /// Where the modulus comes from.
    pub source: &'static str,
}

/// Every material a rod can be reckoned with.
pub const MATERIALS: &[Material] = &[
    Material {
        name: "steel",
        spelling: "steel",
        million_psi: (29.0, 29.0),
        kilograms_per_cubic_metre: (7_750.0, 8_050.0),
        source: TEXTBOOKS,
    },
    Material {
        name: "aluminium",
        spelling: "aluminum",
        million_psi: (10.0, 10.4),
        kilograms_per_cubic_metre: (2_650.0, 2_850.0),
        source: TEXTBOOKS,
    },
    Material {
        name: "brass",
        spelling: "brass",
        million_psi: (14.0, 17.0),
        kilograms_per_cubic_metre: (8_400.0, 8_800.0),
        source: FROM_MEMORY,
    },
    Material {
        name: "wood",
        spelling: "wooden",
        million_psi: (1.0, 2.0),
        kilograms_per_cubic_metre: (400.0, 800.0),
        source: FROM_MEMORY,
    },
];

impl Material {
    /// The material that words such as `stainless steel` name; `None` where they name none of these,
    /// or several.
    pub fn named_in(words: &str) -> Option<&'static Self> {
        let names = |material: &&Self| {
            words
                .split_whitespace()
                .any(|word| word == material.name || word == material.spelling)
        };
        let mut named = MATERIALS.iter().filter(names);
        named.next().filter(|_| named.next().is_none())
    }

    /// The least modulus of elasticity of its range, in pascals: what sags most.
    pub fn softest(&self) -> f64 {
        self.million_psi.0 * 1e6 * PASCALS_IN_A_PSI
    }

    /// The most its range weighs, in kilograms a cubic metre.
    pub fn heaviest(&self) -> f64 {
        self.kilograms_per_cubic_metre.1
    }
}

/// Pascals in a pound-force a square inch: 0.453 592 37 kg x 9.806 65 m/s2 over 0.0254 m squared
/// (NIST SP 811, appendix B.8).
const PASCALS_IN_A_PSI: f64 = 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254);

const TEXTBOOKS: &str = "engineering textbooks' appendices";

const FROM_MEMORY: &str = "from memory, no source";
