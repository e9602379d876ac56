namespace Pattress.Papers.Elevations;

/// <summary>A, B, …, Z, AA: what things go by on the drawings of a job.</summary>
public static class Letters
{
    public static string Of(int index) => index < 26 ? ((char)('A' + index)).ToString() : Of(index / 26 - 1) + (char)('A' + index % 26);
}
