using System.Security.Cryptography;
using System.Text;

namespace Pattress.Jobs;

/// <summary>A fingerprint of the embedded data, so that a plan tells what it rests on.</summary>
internal static class DataHash
{
    /// <summary>First 16 hex digits of SHA-256 over every embedded data file, names and texts in ordinal order.</summary>
    public static string OfEmbedded()
    {
        using var sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in Embedded.Names("data/"))
        {
            sha.AppendData(Encoding.UTF8.GetBytes(name));
            sha.AppendData(Encoding.UTF8.GetBytes(Embedded.Text(name)));
        }
        return Convert.ToHexStringLower(sha.GetHashAndReset())[..16];
    }
}
