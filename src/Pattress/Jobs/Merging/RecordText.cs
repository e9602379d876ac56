namespace Pattress.Jobs.Merging;

/// <summary>A record as the document writes it, to tell two of one id apart.</summary>
internal static class RecordText
{
    public static string Of(Reading reading) =>
        JobWriter.Write(new Job { Walls = [new Wall { Id = "w", WidthMm = 0, HeightMm = 0, Readings = [reading] }] });

    public static string Of(CautionsRead read) => JobWriter.Write(new Job { Done = new() { Read = [read] } });

    public static string Of(Signature signature) => JobWriter.Write(new Job { Done = new() { Signed = [signature] } });
}
