namespace Pattress.Working;

/// <summary>A formula as it is set in type: what stands beside, above and below what. Made by <see cref="FormulaSetting"/>; a renderer draws it.</summary>
public abstract record Setting;

/// <summary>Letters of a symbol, a number or a word.</summary>
public sealed record SetText(string Text) : Setting
{
    /// <summary>True for a number.</summary>
    public bool IsNumber => Text.Length > 0 && (char.IsAsciiDigit(Text[0]) || Text[0] == '.');
}

/// <summary>A sign between two parts, with a little room on either side; a line may be broken before it.</summary>
public sealed record SetSign(string Sign) : Setting;

/// <summary>Parts beside one another; a part is never a row itself.</summary>
public sealed record SetRow(IReadOnlyList<Setting> Parts) : Setting;

/// <summary>A part with letters below (empty: none) and a part above its right shoulder.</summary>
public sealed record SetScript(Setting Of, string Below, Setting? Above) : Setting;

/// <summary>A fraction.</summary>
public sealed record SetFraction(Setting Over, Setting Under) : Setting;

/// <summary>A root; <paramref name="Index"/> is empty for the square root.</summary>
public sealed record SetRoot(Setting Of, string Index) : Setting;

/// <summary>A part between two signs as high as it: ( ), | |, ⌈ ⌉, ⌊ ⌋.</summary>
public sealed record SetFence(string Left, Setting Of, string Right) : Setting;
