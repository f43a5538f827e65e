p () 
{ 
    snap $1;
    convert $S/$1.png -crop 244x500+1122+240 +repage $S/p$1.png
}
