using System.Globalization;

namespace Pattress.Jobs.Site;

/// <summary>A moment as a document holds it: UTC to the second, ISO 8601.</summary>
public static class Stamp
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    public static string Text(DateTimeOffset moment) => moment.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>The moment of a text of a document, or null when there is none.</summary>
    public static DateTimeOffset? Of(string text) =>
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : null;
}
