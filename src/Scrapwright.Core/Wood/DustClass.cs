namespace Scrapwright.Core.Wood;

/// <summary>What is held of a wood's dust and cancer in people, by [AcgihDust]. The order is from least to most sure.</summary>
public enum DustClass
{
    /// <summary>Not named: A4, not classified. That is not the same as harmless.</summary>
    NotClassified,

    /// <summary>Suspected cause: A2.</summary>
    Suspected,

    /// <summary>Known cause: A1.</summary>
    Known,
}
